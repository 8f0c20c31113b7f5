import type { CircuitKind } from './circuit.ts';

const TWO = ['1', '2'] as const;

/**
 * Pins of a kind in the order in which a line may list them without names. Null: any names (chips and connectors have as many as they have).
 * A common-mode choke runs 1 to 2 and 3 to 4; a transformer names its pins by winding.
 */
const PINS: Readonly<Record<CircuitKind, readonly string[] | null>> = {
  resistor: TWO,
  fusibleResistor: TWO,
  fuse: TWO,
  ntc: TWO,
  varistor: TWO,
  ceramicCapacitor: TWO,
  filmCapacitor: TWO,
  capacitor: TWO,
  electrolyticCapacitor: ['+', '-'],
  inductor: TWO,
  jumper: TWO,
  commonModeChoke: ['1', '2', '3', '4'],
  diode: ['A', 'K'],
  zener: ['A', 'K'],
  led: ['A', 'K'],
  bridgeRectifier: ['~1', '~2', '+', '-'],
  bipolarTransistor: ['B', 'C', 'E'],
  mosfet: ['G', 'D', 'S'],
  shuntReference: ['R', 'A', 'K'],
  optocoupler: ['A', 'K', 'C', 'E'],
  transformer: null,
  controller: null,
  negotiationChip: null,
  connector: null,
  heatSink: null,
  load: null,
  other: null,
};

/** Null where the kind has no fixed pins. */
export function pinsOf(kind: CircuitKind): readonly string[] | null {
  return PINS[kind];
}

/** The two ends of the LED of an optocoupler stand on one side, the transistor on the other. */
export const LED_PINS: ReadonlySet<string> = new Set(['A', 'K']);

/** "P.1" is the dot end of winding P. Null for a pin that is not written so. */
export function windingOf(pin: string): { winding: string; end: '1' | '2' } | null {
  const parts = /^(.+)\.([12])$/.exec(pin);
  return parts === null ? null : { winding: parts[1] ?? '', end: parts[2] === '1' ? '1' : '2' };
}
