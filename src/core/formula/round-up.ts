/** Up to the next multiple of `step`; a value that is a multiple, but for the last bits, stays. */
export function roundUp(value: number, step: number): number {
  const LAST_BITS = 1e-9; // share of a step that counts as rounding noise
  const steps = Math.ceil(value / step - LAST_BITS);
  const decimal = Math.round(1 / step);
  return steps / decimal;
}
