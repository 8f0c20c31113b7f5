import type { CaseHead, CaseStore } from '../../app/casebook/casebook-store.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import type { Connection } from './connection.ts';
import { findCases } from './find.ts';
import { admitHistory } from './history.ts';
import { indexCaseNow } from './index-case.ts';
import { keepAssessment, keptAssessments } from './published.ts';
import { addRevision, addState, findCase, toKeptState, toRevision } from './rows.ts';
import { readScreen, writeScreen } from './screens.ts';

const ALL = -1; // SQLite's LIMIT without a limit

export function sqliteCases(connection: Connection): CaseStore {
  const mark = (id: string, column: 'archived' | 'removed', at: string | null): Promise<CaseHead | null> =>
    connection.write(async (db) => {
      await db
        .updateTable('cases')
        .set({ [column]: at })
        .where('id', '=', id)
        .execute();
      return (await findCase(db, id))?.head ?? null;
    });
  return {
    create: (id, { state, ...first }) =>
      admitHistory(connection, id, {
        archived: null,
        revisions: [{ revision: 1, ...first }],
        states: [{ revision: 1, state }],
        assessments: [],
      }),
    admit: (id, history) => admitHistory(connection, id, history),
    head: (id) => connection.run(async (db) => (await findCase(db, id))?.head ?? null),
    read: (id, revision) =>
      connection.run(async (db) => {
        const found = await findCase(db, id);
        if (found === null) return null;
        const upTo = Math.min(revision ?? found.head.revision, found.head.revision);
        const from = await db
          .selectFrom('states')
          .select(['revision', 'body'])
          .where('case_n', '=', found.n)
          .where('revision', '<=', upTo)
          .orderBy('revision', 'desc')
          .executeTakeFirst();
        if (from === undefined) return null;
        const since = await db
          .selectFrom('revisions')
          .selectAll()
          .where('case_n', '=', found.n)
          .where('revision', '>', from.revision)
          .where('revision', '<=', upTo)
          .orderBy('revision')
          .execute();
        return { head: found.head, from: toKeptState(from), since: since.map(toRevision) };
      }),
    states: (id) =>
      connection.run(async (db) => {
        const rows = await db
          .selectFrom('states')
          .innerJoin('cases', 'cases.n', 'states.case_n')
          .select(['states.revision', 'states.body'])
          .where('cases.id', '=', id)
          .orderBy('states.revision')
          .execute();
        return rows.map(toKeptState);
      }),
    append: (id, expected, written, state) =>
      connection.writeOrRefuse(async (db) => {
        const found = await findCase(db, id);
        if (found === null || found.head.removed !== null) return refuse('case-missing', id, 'a case of this casebook');
        if (found.head.revision !== expected) return 'behind';
        const revision = expected + 1;
        const added = await addRevision(db, found.n, revision, written);
        if (state !== undefined) await addState(db, found.n, { revision, state });
        await db.updateTable('cases').set({ revision, changed: written.at }).where('n', '=', found.n).execute();
        return added;
      }),
    revisions: (id, first, most = ALL) =>
      connection.run(async (db) => {
        const rows = await db
          .selectFrom('revisions')
          .innerJoin('cases', 'cases.n', 'revisions.case_n')
          .selectAll('revisions')
          .where('cases.id', '=', id)
          .where('revisions.revision', '>=', first)
          .orderBy('revisions.revision')
          .limit(most)
          .execute();
        return rows.map(toRevision);
      }),
    writeSummary: (id, summary) =>
      connection.write(async (db) => {
        const found = await db
          .selectFrom('cases')
          .leftJoin('summaries', 'summaries.case_n', 'cases.n')
          .select(['cases.n', 'summaries.revision'])
          .where('id', '=', id)
          .executeTakeFirst();
        if (found === undefined || (found.revision ?? 0) > summary.revision) return;
        const row = { revision: summary.revision, body: JSON.stringify(summary) };
        await db
          .insertInto('summaries')
          .values({ case_n: found.n, ...row })
          .onConflict((clash) => clash.column('case_n').doUpdateSet(row))
          .execute();
        indexCaseNow(connection.sqlite, found.n, id, summary);
      }),
    find: (query) => connection.run((db) => findCases(db, query)),
    setArchived: (id, at) => mark(id, 'archived', at),
    remove: async (id, at) => (await mark(id, 'removed', at)) !== null,
    restore: (id) => mark(id, 'removed', null),
    readScreen: (id) => connection.run((db) => readScreen(db, id)),
    writeScreen: (id, key, value) => connection.write((db) => writeScreen(db, id, key, value)),
    keepAssessment: (id, kept) => connection.write((db) => keepAssessment(db, id, kept)),
    assessments: (id) => connection.run((db) => keptAssessments(db, id)),
  };
}
