import { assessCase } from '../app/assess-case.ts';
import { casebookCaseSource } from '../app/casebook/casebook-case-source.ts';
import { stateAt } from '../app/casebook/state-at.ts';
import { refuse } from '../core/quantity/refusal.ts';
import type { Assessment } from '../core/result/assessment.ts';
import { caseFolder } from '../store/folder/case-folder.ts';
import { Refused } from './output.ts';
import { withCasebook } from './with-casebook.ts';

/** Judges a case: of a folder, or with `casebook` the one of that id in a casebook, also while a server has it open. */
export async function judgeCase(which: string, from: { casebook?: string }): Promise<Assessment> {
  return (await judgeOpenCase(which, from)).assessment;
}

/** The same with the case itself, for what is drawn from the evidence. */
export async function judgeOpenCase(which: string, { casebook }: { casebook?: string }): Promise<JudgedCase> {
  if (casebook === undefined) return judged(await assessCase(caseFolder(which)));
  return withCasebook(casebook, { access: 'read' }, async (store) => {
    const found = await stateAt(store, which);
    if (found === null) throw new Refused([refuse('case-missing', which, 'a case of this casebook', { place: casebook })]);
    return judged(await assessCase(casebookCaseSource(found.state, store.files)));
  });
}

type JudgedCase = Exclude<Awaited<ReturnType<typeof assessCase>>, unknown[]>;

function judged(result: Awaited<ReturnType<typeof assessCase>>): JudgedCase {
  if (Array.isArray(result)) throw new Refused(result);
  return result;
}
