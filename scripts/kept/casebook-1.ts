/** Builds the kept casebook of version 1: `npx tsx scripts/kept/casebook-1.ts FILE`. Its SQL is that of version 1 and stays as it is. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { applyChanges } from '../../src/app/casebook/apply-changes.ts';
import type { CaseState } from '../../src/app/casebook/case-state.ts';
import type { Change } from '../../src/app/casebook/change.ts';
import { digestOf } from '../../src/core/result/digest.ts';
import { migrate } from '../../src/store/sqlite/migrate.ts';

const DAY = '2026-03-02T08:00:00Z';
const EXAMPLE = 'examples/fell-12';
const KEPT_CASES = 4; // one archived, one removed, one as made, one edited and published

/** Copies of an invented case, the first archived, the second removed, with the last one edited, published, and an upload never ended. */
export function buildVersion1(path: string, cases: number): void {
  const sqlite = new Database(path);
  try {
    sqlite.pragma('journal_mode = WAL');
    migrate(sqlite, 1);
    sqlite.transaction(() => fill(sqlite, cases))();
  } finally {
    sqlite.close();
  }
}

function fill(sqlite: Database.Database, cases: number): void {
  const example = JSON.parse(readFileSync(`${EXAMPLE}/case.json`, 'utf8')) as CaseState['case'];
  for (const file of example['files'] as { path: string; sha256: string; bytes: number }[]) {
    const { lastInsertRowid: n } = sqlite
      .prepare('INSERT INTO files (begun, sha256, bytes) VALUES (?, ?, ?)')
      .run(DAY, file.sha256, file.bytes);
    sqlite.prepare('INSERT INTO chunks (file_n, place, body) VALUES (?, 0, ?)').run(n, readFileSync(`${EXAMPLE}/${file.path}`));
  }
  const { lastInsertRowid: left } = sqlite.prepare('INSERT INTO files (begun) VALUES (?)').run(DAY);
  sqlite.prepare('INSERT INTO chunks (file_n, place, body) VALUES (?, 0, ?)').run(left, Buffer.alloc(9));
  for (let number = 1; number <= cases; number += 1) addCase(sqlite, example, number, cases);
}

function addCase(sqlite: Database.Database, example: CaseState['case'], number: number, cases: number): void {
  const id = `fell-12-${number}`;
  const first: CaseState = { case: { ...example, id }, drafts: {} };
  const changes: Change[] = [{ at: '/case/sample', was: 'A', to: `S${number}` }];
  const second = applyChanges(first, changes).state;
  const edited = number === cases;
  const { lastInsertRowid: n } = sqlite
    .prepare('INSERT INTO cases (id, revision, created, changed, archived, removed) VALUES (?, ?, ?, ?, ?, ?)')
    .run(id, edited ? 2 : 1, DAY, DAY, number === 1 ? DAY : null, number === 2 ? DAY : null);
  sqlite.prepare('INSERT INTO summaries (case_n, revision, body) VALUES (?, 1, ?)').run(n, JSON.stringify(summaryOf(number)));
  const addRevision = sqlite.prepare(
    "INSERT INTO revisions (case_n, revision, at, writer, step, name, of_step, changes, sha256) VALUES (?, ?, ?, 'kept', ?, ?, NULL, ?, ?)",
  );
  const name = JSON.stringify({ key: 'create', args: {} });
  addRevision.run(n, 1, DAY, 's1', name, '[]', digestOf(first));
  if (edited) addRevision.run(n, 2, DAY, 's2', name, JSON.stringify(changes), digestOf(second));
  sqlite.prepare('INSERT INTO states (case_n, revision, body) VALUES (?, 1, ?)').run(n, JSON.stringify(first));
  sqlite.prepare("INSERT INTO screens (case_n, key, value) VALUES (?, 'open', 'load')").run(n);
  if (!edited) return;
  const published = Buffer.from('{"published":"once"}\n');
  sqlite
    .prepare('INSERT INTO assessments (case_n, revision, at, sha256, body) VALUES (?, 2, ?, ?, ?)')
    .run(n, DAY, createHash('sha256').update(published).digest('hex'), published);
}

function summaryOf(number: number): object {
  return {
    revision: 1,
    rules: 'r1',
    product: 'fell-12',
    name: `Fell 12 no. ${number}`,
    sample: 'A',
    invented: true,
    failure: number % 2 === 0 ? 'Unsafe' : 'Dangerous',
    doubtful: null,
    coverage: { shock: 'partly examined', fire: 'examined' },
    cells: { shock: 'sni', fire: 'ss' },
    because: 'invented',
    kinds: ['barrel'],
    claims: ['12 V 2 A'],
    marks: [
      {
        check: 'shock/creepage',
        hazard: 'shock',
        outcome: 'fail',
        margin: 1 + 1 / number,
        band: null,
        value: '',
        rung: 'basicNotReinforced',
        finding: 'shock/creepage@pair',
      },
    ],
  };
}

const [, script, target] = process.argv;
if (script === fileURLToPath(import.meta.url) && target !== undefined) buildVersion1(target, KEPT_CASES);
