import { HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const lead = (gauge: number, perMetre: number, read: number): WorkedExample => ({
  formula: 'load/voltage-at-socket',
  publication: 'McLyman, Transformer and Inductor Design Handbook',
  edition: '3rd edition, 2004',
  place: `table 4-9, AWG ${gauge} (${perMetre * 1e4} µΩ/cm): a pair of 1 m at 2 A`,
  origin: 'closed-form',
  inputs: { voltage: read, current: 2, resistance: 2 * perMetre },
  printed: 5,
  unit: 'V',
  tolerance: 0.0005,
  because: HALF_OF_LAST_DIGIT,
});

/** A load that reads 5 V less the drop in its leads stands at 5 V at the socket: 0.857 V and 0.337 V. */
export const LEAD_DROP: readonly WorkedExample[] = [lead(28, 0.2142, 5 - 0.857), lead(24, 0.08421, 5 - 0.337)];
