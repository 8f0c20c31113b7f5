import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import { attachedFiles } from '../../app/casebook/attached-files.ts';
import type { CaseState } from '../../app/casebook/case-state.ts';
import type { CaseSummary } from '../../app/casebook/case-summary.ts';
import type { CasebookCheck } from '../../app/casebook/casebook-store.ts';
import { replayHistory } from '../../app/casebook/replay-history.ts';
import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { canonicalText } from '../../core/result/canonical.ts';
import type { Connection } from './connection.ts';
import { indexOf } from './index-case.ts';
import { toKeptState, toRevision } from './rows.ts';

/** What has been looked at and found so far. */
interface Tally {
  revisions: number;
  files: number;
  bytes: number;
  readonly wrong: Refusal[];
}

/**
 * Reads everything: the file's own structure, every case from its first kept state through every revision with its hash, every kept state
 * and published Assessment, every file with its bytes, and whether what a case refers to is there.
 */
export async function checkCasebook(
  connection: Connection,
  progress?: (share: number) => void,
  signal?: AbortSignal,
): Promise<CasebookCheck> {
  const tally: Tally = { revisions: 0, files: 0, bytes: 0, wrong: [] };
  const structure = connection.sqlite.pragma('integrity_check', { simple: true }) as string;
  if (structure !== 'ok') tally.wrong.push(refuse('casebook-damaged', structure, 'a sound file', { place: connection.path }));
  for (const { table, rowid } of connection.sqlite.pragma('foreign_key_check') as { table: string; rowid: number }[])
    tally.wrong.push(refuse('reference-missing', `row ${rowid} of ${table}`, 'a row that it refers to', { place: table }));
  const ids = await connection.run((db) =>
    db
      .selectFrom('cases')
      .leftJoin('summaries', 'summaries.case_n', 'cases.n')
      .select(['cases.n', 'cases.id', 'cases.revision', 'summaries.body as summary'])
      .orderBy('cases.id')
      .execute(),
  );
  const files = await connection.run((db) =>
    db.selectFrom('files').select(['n', 'sha256', 'bytes']).where('sha256', 'is not', null).orderBy('n').execute(),
  );
  const known = new Set(files.map(({ sha256 }) => sha256 ?? ''));
  const steps = ids.length + files.length;
  let done = 0;
  const pause = async () => {
    done += 1;
    progress?.(done / steps);
    await setImmediate(); // a server goes on answering
    signal?.throwIfAborted();
  };
  for (const one of ids) {
    await checkCase(connection, one, known, tally);
    await pause();
  }
  for (const file of files) {
    await checkFile(connection, file.n, file.sha256 ?? '', file.bytes ?? 0, tally);
    await pause();
  }
  return { cases: ids.length, ...tally };
}

async function checkCase(
  connection: Connection,
  { n, id, revision: newest, summary }: { n: number; id: string; revision: number; summary: string | null },
  known: ReadonlySet<string>,
  tally: Tally,
): Promise<void> {
  const wrong = (code: string, got: string, expected: string, place = '') =>
    tally.wrong.push(refuse(code, got, expected, { place: `${id}${place}` }));
  const rows = await connection.run((db) => db.selectFrom('revisions').selectAll().where('case_n', '=', n).orderBy('revision').execute());
  const kept = await connection.run((db) => db.selectFrom('states').selectAll().where('case_n', '=', n).execute());
  const keptStates = kept.map(toKeptState);
  const states = new Map(keptStates.map(({ revision, state }) => [revision, state]));
  tally.revisions += rows.length;
  if (rows.at(-1)?.revision !== newest || rows.length !== newest)
    wrong('revision-missing', `${rows.length} revisions`, `${newest} without a gap`);
  const attached = new Set<string>();
  if (!states.has(1)) wrong('state-missing', 'no kept state', 'the state of revision 1');
  for (const { revision, state, conflicts } of replayHistory(rows.map(toRevision), keptStates)) {
    const place = ` revision ${revision.revision}`;
    for (const { at } of conflicts) wrong('change-unfit', at, 'a place that stood as the change says', place);
    const keptHere = states.get(revision.revision);
    for (const one of keptHere === undefined || keptHere === state ? [state] : [state, keptHere]) {
      const found = digestOfState(one);
      if (found !== revision.sha256) wrong('hash-differs', found, `the hash that was saved: ${revision.sha256}`, place);
    }
    for (const { sha256 } of attachedFiles(state)) attached.add(sha256);
  }
  for (const hash of attached) if (!known.has(hash)) wrong('file-missing', hash, 'a file that the casebook holds');
  await checkAssessments(connection, n, wrong);
  await checkIndex(connection, n, id, summary, wrong);
}

type Wrong = (code: string, got: string, expected: string, place?: string) => void;

async function checkAssessments(connection: Connection, n: number, wrong: Wrong): Promise<void> {
  const published = await connection.run((db) =>
    db.selectFrom('assessments').select(['revision', 'sha256', 'body']).where('case_n', '=', n).execute(),
  );
  for (const { revision, sha256, body } of published) {
    const found = createHash('sha256').update(body).digest('hex');
    if (found !== sha256) wrong('hash-differs', found, `the hash that was published: ${sha256}`, ` Assessment of revision ${revision}`);
  }
}

/** What finding goes by must be what the summary says. */
async function checkIndex(connection: Connection, n: number, id: string, summary: string | null, wrong: Wrong): Promise<void> {
  const due = indexOf(n, id, summary === null ? null : (JSON.parse(summary) as CaseSummary));
  const [overview, labels, marks] = await connection.run(async (db) => [
    await db.selectFrom('overview').selectAll().where('case_n', '=', n).execute(),
    await db.selectFrom('labels').selectAll().where('case_n', '=', n).execute(),
    await db.selectFrom('marks').selectAll().where('case_n', '=', n).execute(),
  ]);
  for (const [name, found, expected] of [
    ['overview', overview, [due.overview]],
    ['labels', labels, due.labels],
    ['marks', marks, due.marks],
  ] as const)
    if (sortedTexts(found) !== sortedTexts(expected)) wrong('index-differs', `other ${name}`, 'what its summary says');
}

function sortedTexts(rows: readonly object[]): string {
  return rows
    .map((row) => JSON.stringify(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1))))
    .sort()
    .join('\n');
}

async function checkFile(connection: Connection, n: number, sha256: string, bytes: number, tally: Tally): Promise<void> {
  const hash = createHash('sha256');
  let length = 0;
  for (let place = 0; ; place += 1) {
    const chunk = await connection.run((db) =>
      db.selectFrom('chunks').select('body').where('file_n', '=', n).where('place', '=', place).executeTakeFirst(),
    );
    if (chunk === undefined) break;
    hash.update(chunk.body);
    length += chunk.body.length;
  }
  tally.files += 1;
  tally.bytes += length;
  const found = hash.digest('hex');
  if (found !== sha256 || length !== bytes)
    tally.wrong.push(refuse('hash-differs', `${length} bytes with ${found}`, `the ${bytes} bytes that were kept`, { place: sha256 }));
}

/** As `digestOf`, with the platform's own SHA-256: a long history is hashed revision by revision. */
function digestOfState(state: CaseState): string {
  return createHash('sha256').update(canonicalText(state)).digest('hex');
}
