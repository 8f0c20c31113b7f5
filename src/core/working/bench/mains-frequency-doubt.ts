import type { Quantity } from '../../quantity/parse-quantity.ts';

const FREQUENCY_U_HZ = 0.05; // public mains stays within about 0.1 Hz; common practice, no source

/** The frequency of the mains with the doubt of a public network where none is stated. */
export function withMainsDoubt(frequency: Quantity): Quantity {
  return frequency.u === null ? { ...frequency, u: FREQUENCY_U_HZ } : frequency;
}
