import type { Kysely } from 'kysely';
import { CasebookRefused } from '../../app/casebook/casebook-refused.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { findCase } from './rows.ts';
import type { CasebookTables } from './tables.ts';

type Db = Kysely<CasebookTables>;

export async function readScreen(db: Db, id: string): Promise<Record<string, string>> {
  const rows = await db
    .selectFrom('screens')
    .innerJoin('cases', 'cases.n', 'screens.case_n')
    .select(['screens.key', 'screens.value'])
    .where('cases.id', '=', id)
    .execute();
  return Object.fromEntries(rows.map(({ key, value }) => [key, value]));
}

/** Null takes the key away. */
export async function writeScreen(db: Db, id: string, key: string, value: string | null): Promise<void> {
  const found = await findCase(db, id);
  if (found === null) throw new CasebookRefused(refuse('case-missing', id, 'a case of this casebook'));
  if (value === null) await db.deleteFrom('screens').where('case_n', '=', found.n).where('key', '=', key).execute();
  else
    await db
      .insertInto('screens')
      .values({ case_n: found.n, key, value })
      .onConflict((clash) => clash.columns(['case_n', 'key']).doUpdateSet({ value }))
      .execute();
}
