import type { Case, ExhibitOf } from '../evidence/case.ts';
import { HEATING_RECIPE } from '../evidence/computed/heating-curves.ts';
import { digestOf } from '../result/digest.ts';

/** What the curves of a soak hang on: the recipe, the table as the case states it, the bytes of its file and what was settled about it. */
export function heatingKey(one: Pick<Case, 'files'>, soak: ExhibitOf<'soak'>): string {
  const file = one.files.find(({ id }) => id === soak.table.file);
  return digestOf({
    recipe: HEATING_RECIPE,
    table: { columns: soak.table.columns, rows: soak.table.rows ?? [] },
    file: file === undefined ? null : { sha256: file.sha256, settled: Object.entries(file.settled ?? {}).sort() },
  });
}
