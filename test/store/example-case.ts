import { applyChanges } from '../../src/app/casebook/apply-changes.ts';
import type { CaseState } from '../../src/app/casebook/case-state.ts';
import type { CaseSummary, CheckMark } from '../../src/app/casebook/case-summary.ts';
import type { NewRevision } from '../../src/app/casebook/casebook-store.ts';
import type { Change } from '../../src/app/casebook/change.ts';
import { newCase } from '../../src/app/new-case.ts';
import { digestOf } from '../../src/core/result/digest.ts';

/** Invented cases for tests of the database. */
export const DAWN = '2026-03-02T08:00:00Z';

/** The nth minute after dawn. */
export function minute(n: number): string {
  return new Date(Date.parse(DAWN) + n * 60_000).toISOString();
}

export function emptyState(id: string): CaseState {
  return { case: JSON.parse(JSON.stringify(newCase(id))) as CaseState['case'], drafts: {} };
}

/** Revision 1 of a new case. */
export function firstOf(state: CaseState, at = DAWN): NewRevision & { state: CaseState } {
  return { at, by: 'test', step: 'new', name: { key: 'new', args: {} }, changes: [], sha256: digestOf(state), state };
}

/** An edit as the use cases make one: the revision to append and the state after it. */
export function edit(state: CaseState, changes: readonly Change[], at = minute(1), step = at): { written: NewRevision; state: CaseState } {
  const applied = applyChanges(state, changes);
  if (applied.conflicts.length > 0) throw new Error(`the test's own edit does not fit: ${JSON.stringify(applied.conflicts)}`);
  return {
    state: applied.state,
    written: { at, by: 'test', step, name: { key: 'entry', args: {} }, changes: applied.done, sha256: digestOf(applied.state) },
  };
}

export function summaryOf(about: Partial<CaseSummary> = {}): CaseSummary {
  return {
    revision: 1,
    rules: 'r1',
    product: 'quay-cube',
    name: 'Quay cube',
    sample: 'A',
    invented: true,
    failure: 'Nothing found wrong',
    doubtful: null,
    word: about.failure ?? 'Nothing found wrong',
    weight: 'clear',
    mark: 'pass',
    coverage: { shock: 'examined', fire: 'examined' },
    cells: { shock: 'ss', fire: 'ss' },
    because: '',
    kinds: ['usbA'],
    claims: ['5 V 2 A'],
    marks: [],
    unread: [],
    next: [],
    ...about,
  };
}

export function markOf(check: string, outcome: CheckMark['outcome'], margin: number | null): CheckMark {
  return {
    check,
    hazard: check.split('/')[0] ?? '',
    outcome,
    margin,
    band: null,
    limit: null,
    amounts: margin !== null,
    anywhere: false,
    rung: null,
    value: '',
    struck: false,
    says: outcome,
    finding: `${check}@x`,
  };
}
