import { type Assessor, createAssessor } from '../../core/assess/create-assessor.ts';
import type { Case } from '../../core/evidence/case.ts';
import { type CaseParser, createCaseParser } from '../../core/evidence/create-case-parser.ts';
import { type Refusal, sentence } from '../../core/quantity/refusal.ts';
import type { Assessment } from '../../core/result/assessment.ts';
import { createDigest } from '../../core/result/digest.ts';
import { fieldText } from '../../present/words/field-words.ts';
import { type Drawn, toWorkspaceView, type WorkspaceView } from '../../present/workspace/workspace-view.ts';
import type { OpenCase as WithFiles } from '../open-case.ts';
import { applyChanges } from './apply-changes.ts';
import type { CaseState } from './case-state.ts';
import { casebookCaseSource } from './casebook-case-source.ts';
import type { CasebookStore, CaseHead, Revision } from './casebook-store.ts';
import { addRevision, type History, NO_HISTORY } from './history.ts';
import { noSuchCase } from './no-such-case.ts';
import { ResultsShelf } from './results-shelf.ts';
import { TableShelf } from './table-shelf.ts';

/** What is remembered of one open case, so that a key costs what it moves. */
interface Remembered {
  readonly parse: CaseParser;
  readonly assess: Assessor;
  readonly digestOf: (value: unknown) => string;
}

/** A case at the desk. */
export interface OpenCase {
  readonly remembered: Remembered;
  head: CaseHead;
  state: CaseState;
  one: Case;
  history: History;
  assessment: Assessment;
  views: Map<number, WorkspaceView>;
  /** Revisions since the case was opened here, for tabs that are behind. */
  recent: Revision[];
}

type Standing = Pick<OpenCase, 'one' | 'state'>;

/** Reads cases and their files out of a casebook and judges them. */
export class CaseReader {
  readonly #store: CasebookStore;
  readonly #tables = new TableShelf();
  readonly #results = new ResultsShelf();

  constructor(store: CasebookStore) {
    this.#store = store;
  }

  /** The newest revision, judged, with everything that may be undone. */
  async open(id: string): Promise<OpenCase | Refusal> {
    const read = await this.#store.cases.read(id);
    if (read === null || read.head.removed !== null) return noSuchCase(id);
    let { state } = read.from;
    for (const { changes } of read.since) state = applyChanges(state, changes).state;
    const remembered = { parse: createCaseParser(), assess: createAssessor(), digestOf: createDigest() };
    const one = remembered.parse(state.case);
    if (Array.isArray(one)) return one[0] ?? noSuchCase(id);
    const revisions = await this.#store.cases.revisions(id, 1);
    const history = revisions.reduce(addRevision, NO_HISTORY);
    const { assessment, view } = await this.judge(remembered.assess, { state, one });
    return { remembered, head: read.head, state, one, history, assessment, views: new Map([[read.head.revision, view]]), recent: [] };
  }

  /** What the files of a case hold. */
  async filesOf({ one, state }: Standing): Promise<Pick<WithFiles, 'tables' | 'results'>> {
    const source = casebookCaseSource(state, this.#store.files);
    const { tables } = await this.#tables.tablesOf(one, source);
    return { tables, results: await this.#results.resultsOf(one, source) };
  }

  /** Judgement and view; files that could not be read stand among its warnings. `before`: what the parts that did not move are taken from. */
  async judge(judged: Assessor, { state, one }: Standing, before?: Drawn): Promise<{ assessment: Assessment; view: WorkspaceView }> {
    const source = casebookCaseSource(state, this.#store.files);
    const { tables, refusals } = await this.#tables.tablesOf(one, source);
    const assessment = judged(one, tables, await this.#results.resultsOf(one, source));
    const view = toWorkspaceView(assessment, before);
    const unread = refusals.map((refusal) => ({
      at: refusal.place,
      where: fieldText(refusal.place),
      words: sentence({ ...refusal, place: '' }),
    }));
    return { assessment, view: unread.length === 0 ? view : { ...view, warnings: [...unread, ...view.warnings] } };
  }
}
