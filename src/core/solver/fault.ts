import type { Circuit, Part } from './circuit.ts';
import { pinsOf, withPin } from './pins-of.ts';

/** One thing wrong with one part. */
export type Fault =
  | { readonly ref: string; readonly mode: 'short'; readonly pins: readonly [string, string] }
  | { readonly ref: string; readonly mode: 'open'; readonly pin: string }
  | { readonly ref: string; readonly mode: 'worn' };

/** A short is a drop of solder, ohm. House choice. */
const SHORT_OHMS = 0.01;

/** How parts wear; common practice of repair benches, no published source: dried-out electrolytic capacitor, drifted resistor, tired optocoupler, leaky Schottky diode. */
const WORN = { farads: 0.2, seriesOhms: 30, ohms: 2, transfer: 0.3, leak: 30 } as const;
/** Leakage of a healthy Schottky diode where none was given, siemens: 10 µA at 10 V. House choice. */
const SCHOTTKY_SIEMENS = 1e-6;

export const faultId = (fault: Fault): string =>
  fault.mode === 'short'
    ? `${fault.ref} short ${fault.pins.join('-')}`
    : fault.mode === 'open'
      ? `${fault.ref} open ${fault.pin}`
      : `${fault.ref} worn`;

export function canWear(part: Part): boolean {
  if (part.kind === 'capacitor') return part.electrolytic === true;
  return part.kind === 'resistor' || part.kind === 'optocoupler' || (part.kind === 'diode' && part.schottky === true);
}

function wear(part: Part): Part {
  switch (part.kind) {
    case 'capacitor':
      return { ...part, farads: part.farads * WORN.farads, ohms: part.ohms * WORN.seriesOhms };
    case 'resistor':
      return { ...part, ohms: part.ohms * WORN.ohms };
    case 'optocoupler':
      return { ...part, collectorA: part.collectorA.map((amps) => amps * WORN.transfer) };
    case 'diode':
      return { ...part, leakS: (part.leakS ?? SCHOTTKY_SIEMENS) * WORN.leak };
    default:
      throw new Error(`${part.ref} does not wear`);
  }
}

/** The circuit with a fault in it. */
export function applyFault(circuit: Circuit, fault: Fault): Circuit {
  const part = circuit.parts.find(({ ref }) => ref === fault.ref);
  if (part === undefined) throw new Error(`no part ${fault.ref} to be at fault`);
  const replaced = (other: Part): Part[] => circuit.parts.map((one) => (one === part ? other : one));
  if (fault.mode === 'worn') return { ...circuit, parts: replaced(wear(part)) };
  if (fault.mode === 'open') return { ...circuit, parts: replaced(withPin(part, fault.pin, `${fault.ref}/open`)) };
  const netOf = (name: string): string => {
    const pin = pinsOf(part).find((one) => one.name === name);
    if (pin === undefined) throw new Error(`${fault.ref} has no pin ${name}`);
    return pin.net;
  };
  const bridge: Part = {
    kind: 'resistor',
    ref: `${fault.ref}/short`,
    pins: [netOf(fault.pins[0]), netOf(fault.pins[1])],
    ohms: SHORT_OHMS,
  };
  return { ...circuit, parts: [...circuit.parts, bridge] };
}

/** Every single fault: each pair of pins on different nets shorted, each pin opened (once for a part with two), each part worn that wears. */
export function enumerateFaults(circuit: Circuit): Fault[] {
  return circuit.parts.flatMap((part): Fault[] => {
    const pins = pinsOf(part);
    const out: Fault[] = [];
    pins.forEach((one, index) => {
      for (const other of pins.slice(index + 1))
        if (one.net !== other.net) out.push({ ref: part.ref, mode: 'short', pins: [one.name, other.name] });
    });
    // both ends of a winding or of a two-pole carry the same current: one of them says it all
    const opened = pins.length === 2 ? pins.slice(0, 1) : pins.filter(({ name }) => !name.endsWith('.2'));
    for (const { name } of opened) out.push({ ref: part.ref, mode: 'open', pin: name });
    if (canWear(part)) out.push({ ref: part.ref, mode: 'worn' });
    return out;
  });
}
