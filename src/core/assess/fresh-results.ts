import type { Case } from '../evidence/case.ts';
import { HEATING_RECIPE, type HeatingCurves, heatingCurves } from '../evidence/computed/heating-curves.ts';
import type { Assessment } from '../result/assessment.ts';
import { heatingKey } from './heating-key.ts';

/** What stands in the files of computed exhibits, by the SHA-256 of each file; JSON that nobody looked at yet. */
export type Results = ReadonlyMap<string, unknown>;

/**
 * Kept results that still belong to their evidence, and those that do not: made from other evidence, or not what their recipe writes.
 * Recipes that this version does not know are left alone.
 */
export function freshResults(one: Case, results: Results): { heating: ReadonlyMap<string, HeatingCurves>; stale: Assessment['stale'] } {
  const heating = new Map<string, HeatingCurves>();
  const stale: Assessment['stale'] = [];
  for (const { id, recipe, key, file } of one.computed ?? []) {
    if (recipe !== HEATING_RECIPE) continue;
    const sha256 = one.files.find((own) => own.id === file)?.sha256 ?? '';
    const parsed = heatingCurves.safeParse(results.get(sha256));
    const soak = parsed.success ? one.exhibits.find((own) => own.id === parsed.data.soak) : undefined;
    if (!parsed.success || soak?.kind !== 'soak' || parsed.data.key !== key || heatingKey(one, soak) !== key)
      stale.push({ computed: id, recipe });
    else heating.set(soak.id, parsed.data);
  }
  return { heating, stale };
}
