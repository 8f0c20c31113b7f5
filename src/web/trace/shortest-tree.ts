import type { At } from '../stage/stage-view.ts';

/** The shortest lines that join all points, each to its nearest neighbour so far (Prim's tree). */
export function shortestTree(points: readonly At[]): (readonly [At, At])[] {
  const lines: (readonly [At, At])[] = [];
  const [first, ...rest] = points;
  if (first === undefined) return lines;
  const joined = [first];
  const open = new Set(rest);
  while (open.size > 0) {
    let best: { from: At; to: At; far: number } | null = null;
    for (const from of joined)
      for (const to of open) {
        const far = Math.hypot(from.x - to.x, from.y - to.y);
        if (best === null || far < best.far) best = { from, to, far };
      }
    if (best === null) break;
    lines.push([best.from, best.to]);
    joined.push(best.to);
    open.delete(best.to);
  }
  return lines;
}
