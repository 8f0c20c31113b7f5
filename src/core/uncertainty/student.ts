/**
 * Two-sided 95 % point of Student's distribution, from the normal point by the expansion of Abramowitz and Stegun, Handbook of
 * Mathematical Functions, 1964, 26.7.5. Below five degrees of freedom the expansion is too far off, and the table of JCGM 100:2008, G.2 is used.
 */
const NORMAL_95 = 1.959963984540054;
const FEW: readonly number[] = [12.71, 4.3, 3.18, 2.78]; // JCGM 100:2008, table G.2, 95 %, 1 to 4 degrees of freedom

export function student95(freedom: number): number {
  if (!(freedom >= 1)) throw new Error(`${freedom} degrees of freedom have no interval`);
  const few = FEW[Math.floor(freedom) - 1];
  if (few !== undefined) return few;
  const x = NORMAL_95;
  const x3 = x * x * x;
  const x5 = x3 * x * x;
  const x7 = x5 * x * x;
  const g1 = (x3 + x) / 4;
  const g2 = (5 * x5 + 16 * x3 + 3 * x) / 96;
  const g3 = (3 * x7 + 19 * x5 + 17 * x3 - 15 * x) / 384;
  return x + g1 / freedom + g2 / (freedom * freedom) + g3 / (freedom * freedom * freedom);
}

/** The value that an F-distributed ratio with two degrees of freedom above exceeds with probability `alpha`; closed form for two. */
export function fisherOfTwo(freedomBelow: number, alpha: number): number {
  return (freedomBelow / 2) * (Math.exp((-2 / freedomBelow) * Math.log(alpha)) - 1);
}
