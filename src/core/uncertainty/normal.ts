/**
 * The standard normal distribution. erf by its Maclaurin series near zero and erfc by Lentz's continued fraction in the tails
 * (Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, 7.1.5 and 7.1.14); both converge to double precision.
 */
const SERIES_TO = 2; // |x| below which the series needs fewer terms than the fraction
const ENOUGH = 1e-17;
const MOST_TERMS = 300;

function erfSeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < MOST_TERMS; n += 1) {
    term *= (-x * x) / n;
    const next = term / (2 * n + 1);
    sum += next;
    if (Math.abs(next) < ENOUGH * Math.abs(sum)) break;
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

/** erfc for x >= SERIES_TO: exp(-x²)/√π × 1/(x + (1/2)/(x + 1/(x + (3/2)/(x + ...)))), evaluated from far inside. */
function erfcFraction(x: number): number {
  const DEEP = 60;
  let tail = x;
  for (let k = DEEP; k >= 1; k -= 1) tail = x + k / 2 / tail;
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / tail;
}

/** Φ(z): the share of a standard normal distribution below z. */
export function normalBelow(z: number): number {
  if (z === Number.POSITIVE_INFINITY) return 1;
  if (z === Number.NEGATIVE_INFINITY) return 0;
  const x = Math.abs(z) / Math.SQRT2;
  const upper = x < SERIES_TO ? (1 - erfSeries(x)) / 2 : erfcFraction(x) / 2;
  return z > 0 ? 1 - upper : upper;
}
