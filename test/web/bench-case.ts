import { readFileSync } from 'node:fs';
import { applyChanges, valueAtPlace } from '../../src/app/casebook/apply-changes.ts';
import type { Change, Json } from '../../src/app/casebook/change.ts';
import { newCase } from '../../src/app/new-case.ts';
import { assess } from '../../src/core/assess/assess.ts';
import type { Case } from '../../src/core/evidence/case.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import type { Assessment } from '../../src/core/result/assessment.ts';
import { toWorkspaceView, type WorkspaceView } from '../../src/present/workspace/workspace-view.ts';

/** A case as the bench sees it: what stands in it, and what it becomes by changes. */
export interface BenchCase {
  readonly one: Json;
  readonly valueAt: (place: string) => Json | undefined;
  readonly after: (changes: readonly Change[]) => BenchCase;
  /** Read by the schema; throws with the refusal when it cannot be. */
  readonly parsed: () => Case;
  readonly assessed: () => Assessment;
  readonly view: () => WorkspaceView;
}

export function benchCase(one: Json): BenchCase {
  const parsed = (): Case => {
    const read = parseCase(one);
    if (Array.isArray(read)) throw new Error(JSON.stringify(read[0]));
    return read;
  };
  return {
    one,
    valueAt: (place) => valueAtPlace({ case: one }, place),
    after: (changes) => {
      const applied = applyChanges({ case: one }, changes);
      if (applied.conflicts.length > 0) throw new Error(JSON.stringify(applied.conflicts[0]));
      return benchCase(applied.state.case);
    },
    parsed,
    assessed: () => assess(parsed(), new Map()),
    view: () => toWorkspaceView(assess(parsed(), new Map())),
  };
}

export function emptyCase(): BenchCase {
  return benchCase(newCase('cube') as unknown as Json);
}

export function demoCase(name: string): BenchCase {
  return benchCase(JSON.parse(readFileSync(`examples/${name}/case.json`, 'utf8')) as Json);
}
