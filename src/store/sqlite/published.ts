import type { Kysely } from 'kysely';
import { CasebookRefused } from '../../app/casebook/casebook-refused.ts';
import type { KeptAssessment } from '../../app/casebook/casebook-store.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { findCase } from './rows.ts';
import type { CasebookTables } from './tables.ts';

type Db = Kysely<CasebookTables>;

/** Keeps the bytes of a published Assessment; the same bytes twice are one. */
export async function keepAssessment(db: Db, id: string, kept: KeptAssessment): Promise<void> {
  const found = await findCase(db, id);
  if (found === null || kept.revision > found.head.revision)
    throw new CasebookRefused(refuse('case-missing', `${id} at revision ${kept.revision}`, 'a saved revision of a case of this casebook'));
  await addAssessment(db, found.n, kept);
}

export async function addAssessment(db: Db, n: number, { revision, at, sha256, bytes }: KeptAssessment): Promise<void> {
  await db
    .insertInto('assessments')
    .values({ case_n: n, revision, at, sha256, body: Buffer.from(bytes) })
    .onConflict((clash) => clash.doNothing())
    .execute();
}

/** In order of revision, then time. */
export async function keptAssessments(db: Db, id: string): Promise<KeptAssessment[]> {
  const rows = await db
    .selectFrom('assessments')
    .innerJoin('cases', 'cases.n', 'assessments.case_n')
    .selectAll('assessments')
    .where('cases.id', '=', id)
    .orderBy('assessments.revision')
    .orderBy('assessments.at')
    .orderBy('assessments.sha256')
    .execute();
  return rows.map(({ revision, at, sha256, body }) => ({ revision, at, sha256, bytes: new Uint8Array(body) }));
}
