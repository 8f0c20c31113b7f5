import { BENCH_SET, LABORATORY } from '../check/bench-set.ts';
import { CHECKS } from '../check/registry.ts';
import { FORMULAS } from '../formula/registry.ts';
import { digestOf } from '../result/digest.ts';
import { TABLES } from '../table/registry.ts';

/** Grows whenever a limit, a formula, a table or a check can move a finding; CHANGELOG.md says whose numbers change. */
export const RULES_VERSION = '2';

let known: string | undefined;

/** Hash over everything declared that a verdict can hang on: tables with their sources, formulas, the bench set. */
export function rulesDigest(): string {
  known ??= digestOf({
    version: RULES_VERSION,
    tables: TABLES.map(({ id, source, lookUp, key, columns, rows, cellSources }) => ({
      id,
      source,
      lookUp,
      key,
      columns,
      rows,
      cellSources,
    })),
    formulas: FORMULAS.map(({ id, tex, text, source, inputs, output, validity }) => ({ id, tex, text, source, inputs, output, validity })),
    checks: CHECKS.map(({ id, consequence, needs }) => ({ id, consequence, needs })),
    bench: BENCH_SET,
    laboratory: LABORATORY,
  });
  return known;
}
