import type { Recognised } from '../../circuit/recognise/recognise.ts';

/** What one broken part of the feedback leads to, by rule. */
export interface BrokenFeedback {
  /** Nothing tells the primary to stop: the output rises until a trip, a clamp or a burst ends it. */
  readonly runaway: readonly string[];
  /** The loop rests at the LED and the reference, or the auxiliary rail locks out. */
  readonly floor: readonly string[];
  /** The primary is told to stop for good. */
  readonly lockOut: readonly string[];
}

/**
 * Which single breaks of the feedback parts lead where. Common practice: an upper resistor open, a lower one short, an open LED, LED resistor,
 * optocoupler or reference end in runaway; a lower one open or an upper one short at the floor, never at the reference voltage itself; a
 * reference shorted from cathode to anode in lock-out. Null where the feedback is inside a chip or there is none.
 */
export function brokenFeedback({ regulation, converter }: Recognised): BrokenFeedback | null {
  if (regulation === null || converter === null) return null;
  const open = (id: string): string => `${id} open`;
  const short = (id: string): string => `${id} short`;
  const parts = (links: readonly { readonly parts: readonly string[] }[]): string[] => links.flatMap((link) => link.parts);
  const { divider, reference, optocoupler, zeners, ledResistors } = regulation;
  if (regulation.feedback === 'optocoupler' && optocoupler !== null) {
    const led = [...parts(ledResistors).map(open), open(optocoupler.id)];
    if (reference !== null && divider !== null) {
      // of several resistors in a row one short leaves the others: only a whole leg that is one part counts as shorted
      const [upperAlone, lowerAlone] = [parts(divider.upper).length === 1, parts(divider.lower).length === 1];
      return {
        runaway: [
          ...(divider.upper.length === 1 ? parts(divider.upper).map(open) : []),
          ...(lowerAlone ? parts(divider.lower).map(short) : []),
          ...led,
          open(reference.id),
        ],
        floor: [
          ...(divider.lower.length === 1 ? parts(divider.lower).map(open) : []),
          ...(upperAlone ? parts(divider.upper).map(short) : []),
        ],
        lockOut: [short(reference.id)],
      };
    }
    if (zeners.length > 0) return { runaway: [...parts(zeners).map(open), ...led], floor: parts(zeners).map(short), lockOut: [] };
  }
  if (regulation.feedback === 'auxiliaryZener') {
    const auxiliary = converter.auxiliaries.flatMap(({ rectifiers }) => rectifiers);
    return { runaway: [...parts(zeners).map(open), ...auxiliary.map(open)], floor: parts(zeners).map(short), lockOut: [] };
  }
  return null;
}
