import type { BodyNetwork, Part } from './circuit.ts';

/**
 * Network of IEC 60990, figure 4: 1500 ohm with 0.22 µF across it, 500 ohm, and a filter of 10 kohm and 22 nF whose output U2, over
 * 500 ohm, is the weighted touch current. Component values from secondary copies (a service text with IEC 60065 annex D and a maker's
 * page); the official text was not read.
 */
const SKIN_OHMS = 1500;
const SKIN_F = 0.22e-6;
export const BODY_OHMS = 500;
const FILTER_OHMS = 10e3;
const FILTER_F = 0.022e-6; // with the resistance before it a corner at 1 / (2 π R C), 723 Hz: the bandwidth of the reading
/** Series resistance of the two capacitors, ohm: small beside everything else in the network. House choice. */
const SERIES_OHMS = 0.1;

export const bodyOutput = (ref: string): string => `${ref}/out`;

export function bodyNetworkParts({ ref, pins: [from, to] }: BodyNetwork): Part[] {
  const middle = `${ref}/middle`;
  const out = bodyOutput(ref);
  return [
    { kind: 'resistor', ref, pins: [from, middle], ohms: SKIN_OHMS },
    { kind: 'capacitor', ref, pins: [from, middle], farads: SKIN_F, ohms: SERIES_OHMS },
    { kind: 'resistor', ref, pins: [middle, to], ohms: BODY_OHMS },
    { kind: 'resistor', ref, pins: [middle, out], ohms: FILTER_OHMS },
    { kind: 'capacitor', ref, pins: [out, to], farads: FILTER_F, ohms: SERIES_OHMS },
  ];
}
