/** Heights of labels moved apart until none covers another, in the order given; the first and highest moves least. */
export function spreadLabels(heights: readonly number[], apart: number, lowest: number): readonly number[] {
  const order = heights.map((_, index) => index).sort((a, b) => (heights[a] ?? 0) - (heights[b] ?? 0) || a - b);
  const placed = [...heights];
  let above = Number.NEGATIVE_INFINITY;
  for (const index of order) {
    const height = Math.max(heights[index] ?? 0, above + apart);
    placed[index] = height;
    above = height;
  }
  // what ran out at the foot is pushed back up
  let below = lowest + apart;
  for (const index of [...order].reverse()) {
    const height = Math.min(placed[index] ?? 0, below - apart);
    placed[index] = height;
    below = height;
  }
  return placed;
}
