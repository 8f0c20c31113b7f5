import type { Database } from 'better-sqlite3';
import type { CaseSummary } from '../../app/casebook/case-summary.ts';
import { indexCaseNow } from './index-case.ts';
import { MIGRATIONS, NEWEST_VERSION } from './migration/migrations.ts';

/** Marks a SQLite file as a casebook: "MWcb" (sqlite.org/fileformat2.html, application id at offset 68). */
export const APPLICATION_ID = 0x4d57_6362;

/**
 * Brings a casebook up to a version, all steps in one transaction: after a stop in the middle the file is as it was before.
 * `upTo` other than the newest is for making kept files of old versions.
 */
export function migrate(sqlite: Database, upTo: number = NEWEST_VERSION): void {
  const from = versionOf(sqlite);
  const due = MIGRATIONS.filter(({ version }) => version > from && version <= upTo);
  if (due.length === 0) return;
  sqlite
    .transaction(() => {
      if (from === 0) sqlite.pragma(`application_id = ${APPLICATION_ID}`);
      for (const { statements } of due) sqlite.exec(statements);
      if (due.some(({ indexAgain }) => indexAgain)) indexAllAgain(sqlite);
      sqlite.pragma(`user_version = ${upTo}`);
    })
    .exclusive();
}

export function versionOf(sqlite: Database): number {
  return sqlite.pragma('user_version', { simple: true }) as number;
}

function indexAllAgain(sqlite: Database): void {
  const cases = sqlite
    .prepare<[], { n: number; id: string; summary: string | null }>(
      'SELECT n, id, body AS summary FROM cases LEFT JOIN summaries ON case_n = n',
    )
    .all();
  for (const { n, id, summary } of cases) indexCaseNow(sqlite, n, id, summary === null ? null : (JSON.parse(summary) as CaseSummary));
}
