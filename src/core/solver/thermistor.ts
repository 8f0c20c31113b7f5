/** Absolute zero of the Celsius scale at 25 °C, kelvin: where the resistance of a thermistor is printed. */
const COLD_K = 298.15;
/** Each step lowers the resistance by this share (natural logarithm); finer than any thermistor's own tolerance. House choice. */
const STEP = 0.1;
/** Hottest the part may become before it is no longer described, kelvin above 25 °C. House choice. */
const HOTTEST_K = 200;

/**
 * Resistance (ohm) in equal ratios, and the rise above 25 °C (kelvin) at which each begins: R = R25 exp(B (1/T - 1/298.15)).
 * Source: the two-parameter equation of thermistor data sheets, common practice.
 */
export function coolingSteps(ohms25: number, betaK: number): { readonly ohms: number[]; readonly riseK: number[] } {
  const ohms: number[] = [];
  const riseK: number[] = [];
  for (let index = 0; ; index += 1) {
    const rise = 1 / (1 / COLD_K - (index * STEP) / betaK) - COLD_K;
    if (rise > HOTTEST_K || rise < 0) return { ohms, riseK };
    ohms.push(ohms25 * Math.exp(-index * STEP));
    riseK.push(rise);
  }
}
