/** Second radiation constant h c / k in µm K. Source: CODATA 2018, 1.438776877e-2 m K. */
export const RADIATION_UM_K = 14387.76877;

const WHOLE_SPECTRUM = 15 / (Math.PI * Math.PI * Math.PI * Math.PI); // 15 / π⁴ makes the whole spectrum 1
const ENOUGH = 1e-15;
const MOST_TERMS = 60;

/**
 * Share of all black-body radiation at wavelengths from 0 to λ, at `product` = λ T in µm K: (15/π⁴) Σ exp(-n x) (x³/n + 3x²/n² + 6x/n³ + 6/n⁴)
 * with x = c₂/(λT). Source: the series of Planck's function, as heat transfer textbooks tabulate it; good to 1e-12 above 1000 µm K.
 */
export function blackBodyShare(product: number): number {
  const x = RADIATION_UM_K / product;
  let sum = 0;
  for (let n = 1; n <= MOST_TERMS; n += 1) {
    const term = Math.exp(-n * x) * ((x * x * x) / n + (3 * x * x) / (n * n) + (6 * x) / (n * n * n) + 6 / (n * n * n * n));
    sum += term;
    if (term < ENOUGH * sum) break;
  }
  return WHOLE_SPECTRUM * sum;
}
