import { assess } from '../../core/assess/assess.ts';
import { rulesDigest } from '../../core/assess/rules.ts';
import type { Case } from '../../core/evidence/case.ts';
import { parseCase } from '../../core/evidence/parse-case.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { digestOf } from '../../core/result/digest.ts';
import { renderReport } from '../../present/report/render-report.ts';
import { findOrigin } from '../../present/workspace/origin.ts';
import { toViewChange } from '../../present/workspace/view-change.ts';
import { drawCaseSchematic } from '../draw-case-schematic.ts';
import type { DrawCircuit } from '../drawn-circuit.ts';
import { newCase, slugOf } from '../new-case.ts';
import { readPicture } from '../picture/read-picture.ts';
import { reportExtras } from '../report-extras.ts';
import { fitSoak } from '../soak/fit-soak.ts';
import { keptChanges } from '../soak/kept-changes.ts';
import { applyChanges, type Conflict, invertChanges } from './apply-changes.ts';
import { CaseReader, type OpenCase } from './case-reader.ts';
import type { CaseState } from './case-state.ts';
import { toSummary } from './case-summary.ts';
import { casebookCaseSource } from './casebook-case-source.ts';
import type { CasebookStore, NewRevision, Revision } from './casebook-store.ts';
import type { Change } from './change.ts';
import { circuitAtDesk, handMovesOf } from './circuit-at-desk.ts';
import type { Desk, Edit, EditAnswer, News, StepName } from './desk.ts';
import { freeCaseId } from './free-case-id.ts';
import { addRevision, type History } from './history.ts';
import { noSuchCase } from './no-such-case.ts';
import { padStep } from './pad-edit.ts';
import { takeEdit } from './take-edit.ts';
import { traceChanges } from './trace-edit.ts';
import { Turns } from './turns.ts';

const PAGE = 100; // cases looked at together when lines of the list are made again
const STATE_EVERY = 50; // revisions from one kept state to the next: opening replays no more than these
const MOST_VIEWS = 40; // views of past revisions kept per case, so that a tab a few keys behind gets a change and not the whole
const MOST_OPEN = 12; // cases at the desk at once beyond those that somebody looks at
const TRIES = 3; // when another process writes to the same case

interface Listener {
  readonly heard: (news: News) => void;
  /** The tab that it is told of nothing it wrote itself: the answer to its entry says that. */
  readonly but: string | undefined;
}

/** `now` answers the time in ISO 8601; `newId` a word that was never given before; `draw` may do its work elsewhere. */
export function createDesk(
  store: CasebookStore,
  { now, newId, draw = drawCaseSchematic }: { now: () => string; newId: () => string; draw?: DrawCircuit },
): Desk {
  const open = new Map<string, OpenCase>();
  const turns = new Turns();
  const listeners = new Map<string, Set<Listener>>();
  const owed = new Set<string>(); // cases whose line in the list is older than they are
  const reader = new CaseReader(store);

  async function load(id: string): Promise<OpenCase | Refusal> {
    const known = open.get(id);
    if (known !== undefined) {
      // archived, removed and restored past the desk, which keeps the rest
      const head = await store.cases.head(id);
      if (head === null || head.removed !== null) return noSuchCase(id);
      known.head = { ...known.head, archived: head.archived };
      return known;
    }
    const opened = await reader.open(id);
    if (isRefusal(opened)) return opened;
    open.set(id, opened);
    owed.add(id);
    closeOldest();
    return opened;
  }

  /** Cases that nobody looks at any more are read again when they are wanted: a casebook of thousands does not fit at the desk. */
  function closeOldest(): void {
    for (const [id] of open) {
      if (open.size <= MOST_OPEN) return;
      if (!owed.has(id) && !listeners.has(id) && !turns.taken(id)) open.delete(id);
    }
  }

  /** The case as it stands once everything before has been written. */
  function standing(id: string): Promise<Pick<OpenCase, 'one' | 'assessment' | 'state'> | Refusal> {
    return turns.take(id, async () => {
      const here = await load(id);
      return isRefusal(here) ? here : { one: here.one, assessment: here.assessment, state: here.state };
    });
  }

  interface Step {
    readonly by: string;
    readonly step: string;
    readonly name: StepName;
    readonly of?: string;
    /** The changes as asked for, by the state they meet. */
    readonly changes: (here: OpenCase) => readonly Change[] | Refusal;
    readonly base?: number;
  }

  async function write(id: string, step: Step): Promise<EditAnswer | Refusal> {
    for (let attempt = 0; attempt < TRIES; attempt += 1) {
      const here = await load(id);
      if (isRefusal(here)) return here;
      const asked = step.changes(here);
      if (isRefusal(asked)) return asked;
      const taken = takeEdit(here.state, asked, here.remembered.parse);
      if (Array.isArray(taken)) return taken[0] ?? refuse('nothing-taken', '', 'an entry');
      const base = Math.min(step.base ?? here.head.revision, here.head.revision);
      if (taken.done.length === 0) return answer(here, base, taken.conflicts);
      const at = now();
      const next: NewRevision = {
        at,
        by: step.by,
        step: step.step,
        name: step.name,
        ...(step.of === undefined ? {} : { of: step.of }),
        changes: taken.done,
        sha256: here.remembered.digestOf(taken.state),
      };
      const number = here.head.revision + 1;
      const kept = number % STATE_EVERY === 0 ? taken.state : undefined;
      const stored = await store.cases.append(id, here.head.revision, next, kept);
      if (stored === 'behind') {
        open.delete(id); // another process wrote: read again and try once more
        continue;
      }
      if (isRefusal(stored)) return stored;
      await moveOn(id, here, stored, taken);
      return answer(here, base, taken.conflicts);
    }
    return refuse('busy', id, 'a case that nobody else keeps writing to at this moment; try again', { place: `/cases/${id}` });
  }

  async function moveOn(id: string, here: OpenCase, stored: Revision, taken: { state: CaseState; one: Case }): Promise<void> {
    const before = here.views.get(here.head.revision);
    here.head = { ...here.head, revision: stored.revision, changed: stored.at };
    here.state = taken.state;
    here.one = taken.one;
    here.history = addRevision(here.history, stored);
    here.recent = [...here.recent, stored].slice(-MOST_VIEWS);
    const drawn = before === undefined ? undefined : { assessment: here.assessment, view: before };
    const { assessment, view } = await reader.judge(here.remembered.assess, taken, drawn);
    here.assessment = assessment;
    here.views.set(stored.revision, view);
    for (const revision of here.views.keys()) if (revision <= stored.revision - MOST_VIEWS) here.views.delete(revision);
    owed.add(id);
    if (before === undefined) return;
    const others = [...(listeners.get(id) ?? [])].filter(({ but }) => but !== stored.by);
    if (others.length === 0) return;
    const news = { by: stored.by, base: stored.revision - 1, ...answer(here, stored.revision - 1, []) };
    for (const { heard } of others) heard(news);
  }

  function answer(here: OpenCase, base: number, conflicts: readonly Conflict[]): EditAnswer {
    const view = here.views.get(here.head.revision);
    const old = here.views.get(base);
    if (view === undefined) throw new Error('a case at the desk without its view');
    return {
      revision: here.head.revision,
      changes: here.recent.filter(({ revision }) => revision > base).flatMap(({ changes }) => changes),
      conflicts,
      view: toViewChange(old ?? { ...view, rows: [], chapters: [], tally: [], groups: [], next: [] }, view),
      ...names(here.history),
    };
  }

  return {
    ...circuitAtDesk(store, standing, draw),
    open: (id) =>
      turns.take(id, async () => {
        const here = await load(id);
        if (isRefusal(here)) return here;
        const view = here.views.get(here.head.revision);
        if (view === undefined) throw new Error('a case at the desk without its view');
        return { head: here.head, state: here.state, view, ...names(here.history), screen: await store.cases.readScreen(id) };
      }),
    async create({ name, copyOf, by }) {
      const copied = copyOf === undefined ? null : await turns.take(copyOf, () => load(copyOf));
      if (copied !== null && isRefusal(copied)) return copied;
      const id = await freeCaseId(store, slugOf(name));
      const blank = newCase(id) as unknown as CaseState['case'];
      const own = { ...blank, product: { id: slugOf(name), name } };
      const document = copied === null ? own : { ...copied.state.case, id, product: { ...(copied.state.case['product'] as object), name } };
      const state: CaseState = { case: document as CaseState['case'], drafts: copied?.state.drafts ?? {} };
      const first = {
        at: now(),
        by,
        step: newId(),
        name: { key: copied === null ? 'create' : 'copy', args: copied === null ? {} : { of: copied.head.id } },
        changes: [],
        sha256: digestOf(state),
        state,
      };
      const head = await store.cases.create(id, first);
      if (!isRefusal(head)) await turns.take(id, () => load(id));
      return head;
    },
    edit: (id, edit: Edit) => {
      const changes = edit.changes.filter(({ at }) => at.startsWith('/case/'));
      return turns.take(id, () => write(id, { ...edit, changes: () => changes }));
    },
    undo: (id, by) =>
      turns.take(id, async () => {
        const here = await load(id);
        if (isRefusal(here)) return here;
        const last = here.history.done.at(-1);
        if (last === undefined) return refuse('nothing-to-undo', id, 'something that was entered');
        const changes = last.revisions.toReversed().flatMap((revision) => invertChanges(revision.changes));
        return write(id, { by, step: newId(), name: { key: 'undo', args: {} }, of: last.step, changes: () => changes });
      }),
    redo: (id, by) =>
      turns.take(id, async () => {
        const here = await load(id);
        if (isRefusal(here)) return here;
        const last = here.history.undone.at(-1);
        if (last === undefined) return refuse('nothing-to-redo', id, 'something that was undone');
        const changes = last.revisions.flatMap((revision) => revision.changes);
        return write(id, { by, step: newId(), name: { key: 'redo', args: {} }, of: last.step, changes: () => changes });
      }),
    assess: (id) =>
      turns.take(id, async () => {
        const here = await load(id);
        return isRefusal(here) ? here : { assessment: here.assessment, state: here.state, revision: here.head.revision };
      }),
    async assessRevision(id, revision) {
      const read = await store.cases.read(id, revision);
      if (read === null) return noSuchCase(id);
      const upTo = read.since.filter((one) => one.revision <= revision);
      const state = upTo.reduce((old, { changes }) => applyChanges(old, changes).state, read.from.state);
      const one = parseCase(state.case);
      return Array.isArray(one) ? (one[0] ?? noSuchCase(id)) : (await reader.judge(assess, { state, one })).assessment;
    },
    origin: (id, step) =>
      turns.take(id, async () => {
        const here = await load(id);
        if (isRefusal(here)) return here;
        return findOrigin(here.assessment, step) ?? refuse('no-such-step', step, 'a step of this Assessment', { place: '/step' });
      }),
    trace: (id, { by, base, step, text }) =>
      turns.take(id, async () => {
        const here = await load(id);
        if (isRefusal(here)) return here;
        const { changes, refusals } = traceChanges(here.state, text);
        const answered = await write(id, { by, base, step, name: { key: 'trace', args: {} }, changes: () => changes });
        return isRefusal(answered) ? answered : { ...answered, refusals };
      }),
    pad: (id, edit) => turns.take(id, () => write(id, padStep(edit))),
    async picture(id, exhibit) {
      const here = await standing(id);
      return isRefusal(here) ? here : readPicture(here.one, (await reader.filesOf(here)).tables, exhibit);
    },
    async foresee(id, { by, base, step, soak, withinK }, watch) {
      // fitting takes longer than an entry: it is done on what stood when it was asked for, and entries do not wait behind it
      const here = await standing(id);
      if (isRefusal(here)) return here;
      const kept = await fitSoak(here.one, casebookCaseSource(here.state, store.files), soak, withinK, watch);
      if (isRefusal(kept)) return kept;
      const upload = await store.files.begin(now());
      await upload.write(kept.bytes);
      await upload.finish();
      const name = { key: 'foresee', args: {} };
      const answered = await turns.take(id, () => write(id, { by, base, step, name, changes: ({ state }) => keptChanges(state, kept) }));
      return isRefusal(answered) ? answered : { ...answered, curves: kept.curves };
    },
    async report(id) {
      const here = await standing(id);
      if (isRefusal(here)) return here;
      const kept = await reader.filesOf(here);
      return renderReport(
        here.assessment,
        await reportExtras(here.one, here.assessment, { moves: await handMovesOf(store, id), draw, kept }),
      );
    },
    listen(id, heard, but) {
      const all = listeners.get(id) ?? new Set();
      const one: Listener = { heard, but };
      listeners.set(id, all.add(one));
      return () => {
        all.delete(one);
        if (all.size === 0 && listeners.get(id) === all) listeners.delete(id);
      };
    },
    async refresh(signal) {
      const rules = rulesDigest();
      for (let from = 0; !signal.aborted; from += PAGE) {
        const { rows } = await store.cases.find({ from, count: PAGE, sort: 'name' });
        for (const { head, summary } of rows) {
          if (signal.aborted) return;
          if (summary?.revision === head.revision && summary.rules === rules) continue;
          await turns.take(head.id, () => load(head.id));
          owed.add(head.id);
          await this.settle();
          open.delete(head.id);
        }
        if (rows.length < PAGE) return;
      }
    },
    async settle() {
      await turns.over();
      for (const id of owed) {
        owed.delete(id);
        const here = open.get(id);
        if (here === undefined) continue;
        try {
          await store.cases.writeSummary(id, toSummary(here.one, here.assessment, here.head.revision));
        } catch (error) {
          owed.add(id); // still owed once there is room
          throw error;
        }
      }
    },
  };
}

function names({ done, undone }: History): { undo: StepName | null; redo: StepName | null } {
  return { undo: done.at(-1)?.name ?? null, redo: undone.at(-1)?.name ?? null };
}
