/** Halvings of the bracket: beyond them the crossing is known to a ten-thousandth of the step. */
const HALVINGS = 14;

/** Cubic through values and rates at both ends of a step, at share s of it. Rates are per step. */
export function hermite(s: number, g0: number, rate0: number, g1: number, rate1: number): number {
  const r = 1 - s;
  return r * r * ((1 + 2 * s) * g0 + s * rate0) + s * s * ((3 - 2 * s) * g1 - r * rate1);
}

/** Share of the step at which the cubic rises through zero, given that it ends above. */
export function crossing(g0: number, rate0: number, g1: number, rate1: number): number {
  if (g0 >= 0) return 0;
  let low = 0;
  let high = 1;
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    if (hermite(middle, g0, rate0, g1, rate1) > 0) high = middle;
    else low = middle;
  }
  return high;
}

/** Highest value of the cubic inside the step where it rises at first and falls at last, by the parabola through both rates. */
export function insideHighest(g0: number, rate0: number, g1: number, rate1: number): number {
  return hermite(rate0 / (rate0 - rate1), g0, rate0, g1, rate1);
}
