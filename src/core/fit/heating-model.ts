/**
 * A body that heats towards an end: y = e - d exp(-x / τ), and with a second, faster time constant for a part inside a case,
 * y = e - d exp(-x / τ) - d₂ exp(-x / τ₂). Time constants are kept as logarithms, so that they stay positive.
 */
export type Shape = 'one' | 'two';

/** [e, d, ln τ] or [e, d, ln τ, d₂, ln τ₂]. */
export type Parameters = readonly number[];

export const NUMBER_OF: Readonly<Record<Shape, number>> = { one: 3, two: 5 };

export function heightAt(p: Parameters): (x: number) => number {
  const [e = 0, d = 0, l = 0, d2 = 0, l2 = 0] = p;
  const rate = Math.exp(-l);
  if (p.length === NUMBER_OF.one) return (x) => e - d * Math.exp(-x * rate);
  const rate2 = Math.exp(-l2);
  return (x) => e - d * Math.exp(-x * rate) - d2 * Math.exp(-x * rate2);
}

/** Partial derivatives by each parameter. */
export function slopesAt(p: Parameters): (x: number) => number[] {
  const [, d = 0, l = 0, d2 = 0, l2 = 0] = p;
  const rate = Math.exp(-l);
  const rate2 = Math.exp(-l2);
  if (p.length === NUMBER_OF.one)
    return (x) => {
      const left = Math.exp(-x * rate);
      return [1, -left, -d * left * x * rate];
    };
  return (x) => {
    const left = Math.exp(-x * rate);
    const left2 = Math.exp(-x * rate2);
    return [1, -left, -d * left * x * rate, -left2, -d2 * left2 * x * rate2];
  };
}
