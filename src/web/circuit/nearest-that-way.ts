import type { At } from '../stage/stage-view.ts';

const ASIDE = 2; // how much more a step aside counts than one ahead

/** The part that lies nearest in one direction; null where there is none. */
export function nearestThatWay(places: readonly { readonly part: string; readonly at: At }[], from: string, way: At): string | null {
  const here = places.find(({ part }) => part === from)?.at;
  if (here === undefined) return null;
  let best: { part: string; far: number } | null = null;
  for (const { part, at } of places) {
    const [dx, dy] = [at.x - here.x, at.y - here.y];
    const ahead = dx * way.x + dy * way.y;
    const aside = Math.abs(dx * way.y) + Math.abs(dy * way.x);
    if (part === from || ahead <= 0 || aside > ASIDE * ahead) continue;
    const far = ahead + ASIDE * aside;
    if (best === null || far < best.far) best = { part, far };
  }
  return best?.part ?? null;
}
