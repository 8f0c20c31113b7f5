/** Small dense matrices in row order, for the loop that runs millions of times; set-up that runs once per topology uses a library. */

/** out = a b, all n by n; out is neither a nor b. */
export function multiply(a: Float64Array, b: Float64Array, n: number, out: Float64Array): void {
  out.fill(0);
  for (let i = 0; i < n; i += 1) {
    const row = i * n;
    for (let k = 0; k < n; k += 1) {
      const factor = a[row + k]!;
      if (factor === 0) continue;
      const from = k * n;
      for (let j = 0; j < n; j += 1) out[row + j]! += factor * b[from + j]!;
    }
  }
}

/** Row r of a matrix with n columns, times x. */
export function rowTimes(rows: Float64Array, r: number, x: Float64Array, n: number): number {
  let sum = 0;
  const from = r * n;
  for (let j = 0; j < n; j += 1) sum += rows[from + j]! * x[j]!;
  return sum;
}

/** out[i] = row i times x, for the first `count` rows. */
export function rowsTimes(rows: Float64Array, count: number, x: Float64Array, n: number, out: Float64Array): void {
  for (let i = 0, at = 0; i < count; i += 1, at += n) {
    let even = 0;
    let odd = 0;
    let j = 0;
    for (; j + 1 < n; j += 2) {
      even += rows[at + j]! * x[j]!;
      odd += rows[at + j + 1]! * x[j + 1]!;
    }
    if (j < n) even += rows[at + j]! * x[j]!;
    out[i] = even + odd;
  }
}

/** For each listed row: its value and its rate of change at x. */
export function valuesAndRates(
  list: readonly number[],
  rows: Float64Array,
  rates: Float64Array,
  x: Float64Array,
  n: number,
  values: Float64Array,
  out: Float64Array,
): void {
  for (let index = 0; index < list.length; index += 1) {
    const row = list[index]!;
    const from = row * n;
    let value = 0;
    let rate = 0;
    for (let j = 0; j < n; j += 1) {
      const xj = x[j]!;
      value += rows[from + j]! * xj;
      rate += rates[from + j]! * xj;
    }
    values[row] = value;
    out[row] = rate;
  }
}
