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

/** out[i] = row i times x, for the first `count` rows; four rows at once, so that the processor need not wait for each sum. */
export function rowsTimes(rows: Float64Array, count: number, x: Float64Array, n: number, out: Float64Array): void {
  let i = 0;
  for (; i + 3 < count; i += 4) {
    const r0 = i * n;
    const r1 = r0 + n;
    const r2 = r1 + n;
    const r3 = r2 + n;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let s3 = 0;
    for (let j = 0; j < n; j += 1) {
      const xj = x[j]!;
      s0 += rows[r0 + j]! * xj;
      s1 += rows[r1 + j]! * xj;
      s2 += rows[r2 + j]! * xj;
      s3 += rows[r3 + j]! * xj;
    }
    out[i] = s0;
    out[i + 1] = s1;
    out[i + 2] = s2;
    out[i + 3] = s3;
  }
  for (; i < count; i += 1) out[i] = rowTimes(rows, i, x, n);
}

/** For each listed row: its value and its rate of change at x; two rows at once. */
export function valuesAndRates(
  list: readonly number[],
  rows: Float64Array,
  rates: Float64Array,
  x: Float64Array,
  n: number,
  values: Float64Array,
  out: Float64Array,
): void {
  let index = 0;
  for (; index + 1 < list.length; index += 2) {
    const one = list[index]!;
    const other = list[index + 1]!;
    const r0 = one * n;
    const r1 = other * n;
    let v0 = 0;
    let v1 = 0;
    let d0 = 0;
    let d1 = 0;
    for (let j = 0; j < n; j += 1) {
      const xj = x[j]!;
      v0 += rows[r0 + j]! * xj;
      d0 += rates[r0 + j]! * xj;
      v1 += rows[r1 + j]! * xj;
      d1 += rates[r1 + j]! * xj;
    }
    values[one] = v0;
    values[other] = v1;
    out[one] = d0;
    out[other] = d1;
  }
  if (index < list.length) {
    const last = list[index]!;
    values[last] = rowTimes(rows, last, x, n);
    out[last] = rowTimes(rates, last, x, n);
  }
}
