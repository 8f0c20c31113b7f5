/** value × 10^exponent, correctly rounded: 4.9 shifted by -3 is 0.0049, where 4.9 × 0.001 is not. `exponent` is an integer. */
export function shiftDecimal(value: number, exponent: number): number {
  if (!Number.isFinite(value) || value === 0 || exponent === 0) return value;
  const [mantissa = '0', own = '0'] = String(value).split('e');
  return Number(`${mantissa}e${Number(own) + exponent}`);
}

/** The integer n with factor = 10^n, or null. */
export function powerOfTen(factor: number): number | null {
  if (factor === 1) return 0;
  const exponent = Math.round(Math.log10(factor));
  return Number(`1e${exponent}`) === factor ? exponent : null;
}
