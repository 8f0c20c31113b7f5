import type { Kysely, Selectable } from 'kysely';
import type { CaseState } from '../../app/casebook/case-state.ts';
import type { CaseHead, KeptState, NewRevision, Revision } from '../../app/casebook/casebook-store.ts';
import type { Change } from '../../app/casebook/change.ts';
import type { CasebookTables } from './tables.ts';

type Db = Kysely<CasebookTables>;
export const HEAD_COLUMNS = ['cases.id', 'cases.revision', 'cases.created', 'cases.changed', 'cases.archived', 'cases.removed'] as const;

/** The number of a case in the other tables, with its head. */
export async function findCase(db: Db, id: string): Promise<{ n: number; head: CaseHead } | null> {
  const row = await db
    .selectFrom('cases')
    .select(['cases.n', ...HEAD_COLUMNS])
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) return null;
  const { n, ...head } = row;
  return { n, head };
}

export function toRevision(row: Omit<Selectable<CasebookTables['revisions']>, 'case_n'>): Revision {
  return {
    revision: row.revision,
    at: row.at,
    by: row.writer,
    step: row.step,
    name: JSON.parse(row.name) as Revision['name'],
    ...(row.of_step === null ? {} : { of: row.of_step }),
    changes: JSON.parse(row.changes) as Change[],
    sha256: row.sha256,
  };
}

export async function addRevision(db: Db, n: number, revision: number, written: NewRevision): Promise<Revision> {
  const row = {
    revision,
    at: written.at,
    writer: written.by,
    step: written.step,
    name: JSON.stringify(written.name),
    of_step: written.of ?? null,
    changes: JSON.stringify(written.changes),
    sha256: written.sha256,
  };
  await db
    .insertInto('revisions')
    .values({ case_n: n, ...row })
    .execute();
  return toRevision(row);
}

export async function addState(db: Db, n: number, { revision, state }: KeptState): Promise<void> {
  await db
    .insertInto('states')
    .values({ case_n: n, revision, body: JSON.stringify(state) })
    .execute();
}

export function toKeptState({ revision, body }: { revision: number; body: string }): KeptState {
  return { revision, state: JSON.parse(body) as CaseState };
}
