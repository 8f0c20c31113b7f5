export type CurvePoint = readonly [number, number];

/** The pieces of a line that lie at or above a floor, each ending where the line crosses it. */
export function cutBelow(points: readonly CurvePoint[], floor: number): readonly (readonly CurvePoint[])[] {
  const pieces: CurvePoint[][] = [];
  let piece: CurvePoint[] = [];
  points.forEach((point, index) => {
    const before = points[index - 1];
    const isAbove = point[1] >= floor;
    if (before !== undefined && before[1] >= floor !== isAbove) piece.push(crossing(before, point, floor));
    if (isAbove) piece.push(point);
    else if (piece.length > 0) {
      pieces.push(piece);
      piece = [];
    }
  });
  return piece.length > 0 ? [...pieces, piece] : pieces;
}

function crossing([x0, y0]: CurvePoint, [x1, y1]: CurvePoint, floor: number): CurvePoint {
  return [x0 + ((x1 - x0) * (floor - y0)) / (y1 - y0), floor];
}
