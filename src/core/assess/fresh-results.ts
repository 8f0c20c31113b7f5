import { HEATING_RECIPE, type HeatingCurves, heatingCurves } from '../evidence/computed/heating-curves.ts';
import type { Assessment } from '../result/assessment.ts';
import type { Bench } from '../working/bench/bench.ts';
import { heatingKey } from './heating-key.ts';

/** What stands in the files of computed exhibits, by the SHA-256 of each file; JSON that nobody looked at yet. */
export type Results = ReadonlyMap<string, unknown>;

/**
 * Kept results that still belong to their evidence, and those that do not: made from other evidence, or not what their recipe writes.
 * Recipes that this version does not know are left alone.
 */
export function freshResults(bench: Bench, results: Results): { heating: ReadonlyMap<string, HeatingCurves>; stale: Assessment['stale'] } {
  const heating = new Map<string, HeatingCurves>();
  const stale: Assessment['stale'] = [];
  for (const { id, recipe, key, file } of bench.one.computed ?? []) {
    if (recipe !== HEATING_RECIPE) continue;
    const parsed = heatingCurves.safeParse(results.get(bench.files.get(file)?.sha256 ?? ''));
    const soak = parsed.success ? bench.exhibits.get(parsed.data.soak) : undefined;
    if (!parsed.success || soak?.kind !== 'soak' || parsed.data.key !== key || heatingKey(bench.one, soak) !== key)
      stale.push({ computed: id, recipe });
    else heating.set(soak.id, parsed.data);
  }
  return { heating, stale };
}
