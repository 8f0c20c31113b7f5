import type { CaseHead, CaseHistory } from '../../app/casebook/casebook-store.ts';
import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import type { Connection } from './connection.ts';
import { indexCaseNow } from './index-case.ts';
import { addAssessment } from './published.ts';
import { addRevision, addState, findCase } from './rows.ts';

/** A case with everything that was ever saved of it, in one transaction: a new one with its first revision, or one from elsewhere. */
export function admitHistory(connection: Connection, id: string, history: CaseHistory): Promise<CaseHead | Refusal> {
  const [first] = history.revisions;
  const last = history.revisions.at(-1);
  if (first === undefined || last === undefined) throw new Error('a history has at least one revision');
  if (history.revisions.some(({ revision }, index) => revision !== index + 1)) throw new Error('revisions count from 1 without gaps');
  if (!history.states.some(({ revision }) => revision === 1)) throw new Error('the state of revision 1 is always kept');
  return connection.writeOrRefuse(async (db) => {
    if ((await findCase(db, id)) !== null)
      return refuse('case-exists', id, 'an id that no case of this casebook has had', { place: '/id' });
    const head = { id, revision: last.revision, created: first.at, changed: last.at, archived: history.archived, removed: null };
    const { n } = await db.insertInto('cases').values(head).returning('n').executeTakeFirstOrThrow();
    for (const { revision, ...written } of history.revisions) await addRevision(db, n, revision, written);
    for (const kept of history.states) await addState(db, n, kept);
    for (const kept of history.assessments) await addAssessment(db, n, kept);
    indexCaseNow(connection.sqlite, n, id, null);
    return head;
  });
}
