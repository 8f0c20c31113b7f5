/** 2^exponent for a whole exponent, by doubling and halving: exact in every engine. */
export function powerOfTwo(exponent: number): number {
  const factor = exponent < 0 ? 0.5 : 2;
  let out = 1;
  for (let turn = Math.abs(exponent); turn > 0; turn -= 1) out *= factor;
  return out;
}
