import { applyChanges, type Conflict, sameJson, toPath, toPlace, valueAtPlace } from '../../app/casebook/apply-changes.ts';
import type { CaseState, Draft } from '../../app/casebook/case-state.ts';
import type { Change, Json } from '../../app/casebook/change.ts';
import type { CaseAtDesk, Edit, EditAnswer, News, StepName } from '../../app/casebook/desk.ts';
import type { SaidPad } from '../../app/casebook/pad-edit.ts';
import type { Refusal } from '../../core/quantity/refusal.ts';
import { STILL_HERE } from '../../present/words/page-words.ts';
import { withViewChange } from '../../present/workspace/view-change.ts';
import type { WorkspaceView } from '../../present/workspace/workspace-view.ts';
import { editCase, eventsOf, foreseeCase, openCase, redoCase, traceCircuit, traceOnPhoto, undoCase, writeScreen } from '../api/casebook.ts';
import { NOT_REACHED, Problem } from '../api/request.ts';
import { newItemId } from './place-parts.ts';

/** What the page of one case knows. A new object after every change, so that whoever draws it can tell. */
export interface CaseSnapshot {
  readonly id: string;
  /** With everything typed here, also what the server has not confirmed yet. */
  readonly state: CaseState;
  readonly view: WorkspaceView;
  readonly revision: number;
  readonly undo: StepName | null;
  readonly redo: StepName | null;
  readonly screen: Readonly<Record<string, string>>;
  /** Entries on their way to the disk. */
  readonly waiting: number;
  readonly savedAt: string;
  /** One sentence about what did not work; the entry it is about stays where it was typed. */
  readonly trouble: { readonly words: string; readonly place: string } | null;
  readonly conflicts: readonly Conflict[];
  /** Findings that the last entry moved. */
  readonly moved: ReadonlySet<string>;
}

const RETRY_MS = 1000; // while the server does not answer
/** What stands in the way of the disk, not of the entry: it stays and is sent again. */
const PASSING: ReadonlySet<string> = new Set([NOT_REACHED, 'disk-full', 'disk-failed', 'casebook-in-use', 'casebook-read-only']);
const KEPT = 'mainsworthy-unsent'; // in the browser's own storage, until the server has it

/**
 * One case in this tab. Entries show at once and go to the server one after the other; what the server answers is the truth, and what was
 * typed meanwhile is laid over it again. Entries that could not be sent are kept in the browser and sent on the next visit.
 */
export class CaseStore {
  readonly tab = newItemId('tab'); // a browser gives randomUUID to loopback only, not to a phone
  #now: CaseSnapshot;
  #confirmed: CaseState;
  #queue: Edit[] = [];
  #sending = false;
  /** Places that another tab changed while an entry of ours for them was waiting. */
  #contested = new Set<string>();
  #listeners = new Set<() => void>();
  #events: EventSource | null = null;

  private constructor(at: CaseAtDesk) {
    this.#confirmed = at.state;
    this.#now = {
      id: at.head.id,
      state: at.state,
      view: at.view,
      revision: at.head.revision,
      undo: at.undo,
      redo: at.redo,
      screen: at.screen,
      waiting: 0,
      savedAt: at.head.changed,
      trouble: null,
      conflicts: [],
      moved: new Set(),
    };
  }

  static async open(id: string): Promise<CaseStore> {
    const store = new CaseStore(await openCase(id));
    store.#listen();
    store.#resume();
    return store;
  }

  get = (): CaseSnapshot => this.#now;

  subscribe = (heard: () => void): (() => void) => {
    this.#listeners.add(heard);
    return () => this.#listeners.delete(heard);
  };

  close(): void {
    this.#events?.close();
  }

  /** What stands at a place, items that still lack something included. */
  valueAt(place: string): Json | undefined {
    const { state } = this.#now;
    const items = itemsOf(state);
    const inside = items.find(([at]) => place === at || place.startsWith(`${at}/`));
    if (inside !== undefined) return valueAtPlace({ item: inside[1] }, `/item${place.slice(inside[0].length)}`);
    const value = valueAtPlace(state, place);
    const apart = items.filter(([at]) => at.slice(0, at.lastIndexOf('/')) === place).map(([, item]) => item);
    const held = Array.isArray(value) ? (value as readonly { readonly id?: string }[]).map(({ id }) => id) : [];
    const joining = apart.filter((item) => !held.includes((item as { readonly id?: string }).id));
    return joining.length > 0 && (value === undefined || Array.isArray(value)) ? [...((value ?? []) as Json[]), ...joining] : value;
  }

  draftAt(place: string): Draft | undefined {
    return this.#now.state.drafts[place] as unknown as Draft | undefined;
  }

  /** Sets one place; what holds it is made when it is not there yet. Entries with the same step are one step of undo. */
  set(place: string, to: Json | undefined, step: string, name: StepName): void {
    const { state } = this.#now;
    const item = itemsOf(state).find(([at]) => place.startsWith(`${at}/`));
    if (item !== undefined) {
      this.change([inItem(state, item, { at: place, to })], step, name);
    } else if (itemsOf(state).some(([at]) => at === place) && to === undefined)
      this.change([{ at: place, to: undefined }], step, name); // an item that never counted goes with its draft
    else this.change([withParents(state, place, to)], step, name);
  }

  change(changes: readonly Change[], step: string, name: StepName): void {
    const real = changes.filter(({ at, was, to }) => !sameJson(was, to) || this.draftAt(at) !== undefined);
    if (real.length === 0) return;
    const last = this.#queue.at(-1);
    const only = real[0];
    const joins = this.#queue.length > (this.#sending ? 1 : 0) && last?.step === step && last.changes.length === 1 && real.length === 1;
    if (joins && only !== undefined && last.changes[0]?.at === only.at)
      this.#queue[this.#queue.length - 1] = { ...last, changes: [{ ...last.changes[0], to: only.to }] };
    else this.#queue.push({ by: this.tab, base: this.#now.revision, step, name, changes: real });
    this.#update({ state: applyHere(this.#now.state, real), waiting: this.#queue.length, trouble: null });
    this.#keep();
    void this.#send();
  }

  async undo(): Promise<void> {
    await this.#ask(() => undoCase(this.#now.id, this.tab));
  }

  async redo(): Promise<void> {
    await this.#ask(() => redoCase(this.#now.id, this.tab));
  }

  /** Takes circuit lines in; answers what could not be read. */
  async trace(text: string, step: string): Promise<readonly Refusal[]> {
    await this.#idle();
    const base = this.#now.revision;
    const answer = await traceCircuit(this.#now.id, { by: this.tab, base, step, text });
    this.#take(answer, base);
    return answer.refusals;
  }

  /** Takes a pad of a photo in, or lets one go; throws the Problem that stands in the way. */
  async pad(pad: SaidPad | { readonly gone: string }, step: string): Promise<void> {
    await this.#idle();
    const base = this.#now.revision;
    this.#take(await traceOnPhoto(this.#now.id, { by: this.tab, base, step, pad }), base);
  }

  /** Works out where a soak is heading and takes what was kept; throws what stands in the way. */
  async foresee(soak: string, withinK: number, progress: (done: number, of: number) => void, signal: AbortSignal): Promise<void> {
    await this.#idle();
    const base = this.#now.revision;
    const ask = { by: this.tab, base, step: newItemId('foresee'), soak, withinK };
    this.#take(await foreseeCase(this.#now.id, ask, progress, signal), base);
  }

  setScreen(key: string, value: string | null): void {
    void this.keepScreen(key, value);
  }

  /** The same for who has to know when the server has it, or did not take it. */
  async keepScreen(key: string, value: string | null): Promise<void> {
    const { [key]: _old, ...others } = this.#now.screen;
    this.#update({ screen: value === null ? others : { ...others, [key]: value } });
    await writeScreen(this.#now.id, key, value).catch(() => undefined); // where a panel stands is no evidence
  }

  dismiss(): void {
    this.#update({ trouble: null, conflicts: [] });
  }

  async #ask(work: () => Promise<EditAnswer>): Promise<void> {
    await this.#idle();
    try {
      this.#take(await work(), this.#now.revision);
    } catch (error) {
      this.#trouble(error, '');
    }
  }

  async #idle(): Promise<void> {
    while (this.#queue.length > 0) await new Promise((resolve) => setTimeout(resolve, 10));
  }

  async #send(): Promise<void> {
    if (this.#sending) return;
    this.#sending = true;
    for (let next = this.#queue[0]; next !== undefined; next = this.#queue[0]) {
      const base = this.#now.revision;
      try {
        const answer = await editCase(this.#now.id, { ...next, base, changes: this.#rebased(next) });
        this.#queue.shift();
        for (const { at } of next.changes) this.#contested.delete(at);
        this.#take(answer, base);
      } catch (error) {
        const passes = !(error instanceof Problem) || PASSING.has(error.code);
        if (!passes) {
          this.#queue.shift();
          this.#update({ state: this.#withQueue(), waiting: this.#queue.length });
        }
        const kept = passes && error instanceof Problem && error.code !== NOT_REACHED;
        this.#trouble(kept ? new Error(STILL_HERE(error.message)) : error, next.changes[0]?.at ?? '');
        if (passes) await new Promise((resolve) => setTimeout(resolve, RETRY_MS));
      }
      this.#keep();
    }
    this.#sending = false;
  }

  #take(answer: EditAnswer | News, base: number): void {
    if (answer.revision < this.#now.revision) return;
    const isNext = base === this.#now.revision;
    if (!isNext) {
      void this.#reload();
      return;
    }
    this.#confirmed = applyChanges(this.#confirmed, answer.changes).state;
    this.#queue = throughItems(this.#queue, this.#confirmed);
    const moved = answer.view.rows.map(({ id }) => id);
    this.#update({
      state: this.#withQueue(),
      view: withViewChange(this.#now.view, answer.view),
      revision: answer.revision,
      undo: answer.undo,
      redo: answer.redo,
      waiting: this.#queue.length,
      savedAt: new Date().toISOString(),
      trouble: null,
      conflicts: 'conflicts' in answer && answer.conflicts.length > 0 ? answer.conflicts : this.#now.conflicts,
      moved: moved.length > 0 ? new Set(moved) : this.#now.moved,
    });
  }

  async #reload(): Promise<void> {
    const at = await openCase(this.#now.id);
    this.#confirmed = at.state;
    this.#update({ state: this.#withQueue(), view: at.view, revision: at.head.revision, undo: at.undo, redo: at.redo });
  }

  /** What this tab wrote itself since the entry was typed is no conflict; what another wrote there is. */
  #rebased({ changes }: Edit): readonly Change[] {
    return changes.map((change) =>
      this.#contested.has(change.at) ? change : { ...change, was: valueAtPlace(this.#confirmed, change.at) },
    );
  }

  #withQueue(): CaseState {
    return this.#queue.reduce((state, { changes }) => applyHere(state, changes), this.#confirmed);
  }

  #trouble(error: unknown, place: string): void {
    const words = error instanceof Error ? error.message : String(error);
    this.#update({ trouble: { words, place } });
  }

  #listen(): void {
    this.#events = new EventSource(eventsOf(this.#now.id, this.tab));
    this.#events.addEventListener('revision', (event) => {
      const news = JSON.parse((event as MessageEvent<string>).data) as News;
      if (news.by === this.tab) return;
      const waiting = this.#queue.flatMap(({ changes }) => changes.map(({ at }) => at));
      for (const { at } of news.changes) if (waiting.includes(at)) this.#contested.add(at);
      this.#take(news, news.base);
    });
  }

  #keep(): void {
    const key = `${KEPT}/${this.#now.id}`;
    if (this.#queue.length === 0) localStorage.removeItem(key);
    else {
      try {
        localStorage.setItem(key, JSON.stringify(this.#queue));
      } catch {
        // the browser's own storage is full: the page keeps it as long as it is open
      }
    }
  }

  /** Entries that an earlier visit could not send: what still meets the state they were typed in goes now. */
  #resume(): void {
    const kept = localStorage.getItem(`${KEPT}/${this.#now.id}`);
    if (kept === null) return;
    this.#queue = JSON.parse(kept) as Edit[];
    this.#update({ state: this.#withQueue(), waiting: this.#queue.length });
    void this.#send();
  }

  #update(part: Partial<CaseSnapshot>): void {
    this.#now = { ...this.#now, ...part };
    for (const heard of this.#listeners) heard();
  }
}

/** Items that are kept apart because they still lack something, with their places. */
function itemsOf(state: CaseState): [string, Json][] {
  return Object.entries(state.drafts).flatMap(([place, draft]) => {
    const item = (draft as unknown as Draft).item;
    return item === undefined ? [] : [[place, item as Json] as [string, Json]];
  });
}

/** The change that sets a place, made at the nearest holder that is there. */
function withParents(state: object, place: string, to: Json | undefined): Change {
  const path = toPath(place);
  let depth = path.length;
  while (depth > 1 && valueAtPlace(state, toPlace(path.slice(0, depth - 1))) === undefined) depth -= 1;
  const at = toPlace(path.slice(0, depth));
  const wrapped = path.slice(depth).reduceRight<Json | undefined>((inner, key) => (inner === undefined ? undefined : { [key]: inner }), to);
  return { at, was: valueAtPlace(state, at), to: wrapped };
}

/** The state after entries that are not confirmed yet; a text that was not understood, or an item that was kept apart, counts as tried again. */
function applyHere(state: CaseState, changes: readonly Change[]): CaseState {
  const next = applyChanges(state, changes).state;
  const tried = changes.map(({ at }) => at).filter((at) => at in next.drafts);
  if (tried.length === 0) return next;
  return { ...next, drafts: Object.fromEntries(Object.entries(next.drafts).filter(([place]) => !tried.includes(place))) };
}

/** The change of an item that is kept apart, made inside of it. */
function inItem(state: CaseState, [at, held]: [string, Json], change: Change): Change {
  const inside = { item: held };
  const put = withParents(inside, `/item${change.at.slice(at.length)}`, change.to);
  return { at, was: valueAtPlace(state, at), to: applyChanges(inside, [put]).state.item };
}

/** Entries typed while an item was on its way, once it is known that the item is kept apart: they go into the item. */
function throughItems(queue: readonly Edit[], confirmed: CaseState): Edit[] {
  let state = confirmed;
  return queue.map((edit) => {
    const changes = edit.changes.map((change) => {
      const item = itemsOf(state).find(([at]) => change.at.startsWith(`${at}/`));
      const own = item === undefined ? change : inItem(state, item, change);
      state = applyHere(state, [own]);
      return own;
    });
    return { ...edit, changes };
  });
}
