import type { Database } from 'better-sqlite3';
import type { CaseSummary } from '../../app/casebook/case-summary.ts';
import { FAILURES } from '../../core/result/assessment.ts';
import { foldText } from './fold-text.ts';
import type { CasebookTables, LabelField } from './tables.ts';

/** Least examined first. */
const COVERAGES = ['not examined', 'partly examined', 'examined'];

type OverviewRow = CasebookTables['overview'];
export interface CaseIndex {
  readonly overview: OverviewRow;
  readonly labels: readonly CasebookTables['labels'][];
  readonly marks: readonly CasebookTables['marks'][];
}

/** What is kept of a case for finding it. */
export function indexOf(n: number, id: string, summary: CaseSummary | null): CaseIndex {
  const nothing = { name: null, sample: null, failure: null, failure_rank: null, coverage: null, coverage_rank: null, settled: null };
  if (summary === null) return { overview: { case_n: n, search: foldText(id), ...nothing }, labels: [], marks: [] };
  const coverage = worseCoverage(summary);
  const label = (field: LabelField) => (word: string) => ({ field, word, case_n: n });
  const failed = summary.marks.filter(({ outcome }) => outcome === 'fail').map(({ hazard }) => hazard);
  return {
    overview: {
      case_n: n,
      search: foldText([id, summary.product, summary.name, summary.sample, ...summary.claims].join('\n')),
      name: summary.name,
      sample: summary.sample,
      failure: summary.word,
      failure_rank: rankIn(FAILURES, summary.word === summary.failure ? summary.failure : (summary.doubtful ?? summary.failure)),
      coverage,
      coverage_rank: rankIn(COVERAGES, coverage),
      settled: settledShare(summary),
    },
    labels: [
      ...unique(summary.kinds).map(label('kind')),
      ...unique(summary.claims).map(label('claim')),
      ...unique(failed).map(label('hazard')),
    ],
    marks: summary.marks.map(({ check, outcome, margin }) => ({ check_id: check, case_n: n, failed: outcome === 'fail' ? 1 : 0, margin })),
  };
}

/** Writes the index of one case inside the transaction that is open. */
export function indexCaseNow(sqlite: Database, n: number, id: string, summary: CaseSummary | null): void {
  const { overview, labels, marks } = indexOf(n, id, summary);
  sqlite.prepare('DELETE FROM labels WHERE case_n = ?').run(n);
  sqlite.prepare('DELETE FROM marks WHERE case_n = ?').run(n);
  sqlite
    .prepare(
      `INSERT OR REPLACE INTO overview (case_n, search, name, sample, failure, failure_rank, coverage, coverage_rank, settled)
       VALUES (@case_n, @search, @name, @sample, @failure, @failure_rank, @coverage, @coverage_rank, @settled)`,
    )
    .run(overview);
  const addLabel = sqlite.prepare('INSERT INTO labels (field, word, case_n) VALUES (@field, @word, @case_n)');
  for (const label of labels) addLabel.run(label);
  const addMark = sqlite.prepare(
    'INSERT OR REPLACE INTO marks (check_id, case_n, failed, margin) VALUES (@check_id, @case_n, @failed, @margin)',
  );
  for (const mark of marks) addMark.run(mark);
}

function worseCoverage({ coverage }: CaseSummary): string {
  return rankIn(COVERAGES, coverage.shock) < rankIn(COVERAGES, coverage.fire) ? coverage.shock : coverage.fire;
}

function settledShare({ cells }: CaseSummary): number {
  const applying = [...cells.shock, ...cells.fire].filter((cell) => cell !== 'a');
  return applying.length === 0 ? 0 : applying.filter((cell) => cell === 's').length / applying.length;
}

/** A word that is not in the list stands after all that are. */
function rankIn(words: readonly string[], word: string): number {
  const rank = words.indexOf(word);
  return rank < 0 ? words.length : rank;
}

function unique(words: readonly string[]): string[] {
  return [...new Set(words)];
}
