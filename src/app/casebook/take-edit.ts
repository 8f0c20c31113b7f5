import type { Case } from '../../core/evidence/case.ts';
import type { CaseParser } from '../../core/evidence/create-case-parser.ts';
import { parseCase } from '../../core/evidence/parse-case.ts';
import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { applyChanges, type Conflict, toPath, toPlace, valueAtPlace } from './apply-changes.ts';
import type { CaseState } from './case-state.ts';
import type { Change, Json } from './change.ts';

const CASE = '/case';
const MOST_DRAFTS = 200; // of one edit: a paste of more is not a table of readings

export interface Taken {
  readonly state: CaseState;
  readonly one: Case;
  /** What was changed, drafts included, as it goes into the history. */
  readonly done: readonly Change[];
  readonly conflicts: readonly Conflict[];
}

/**
 * Takes an edit into a case. What the schema refuses at a place that the edit touches is kept as a draft there and left out of the case;
 * what it refuses elsewhere (a port that a sweep still names) refuses the edit whole. `parse` is `parseCase`, or one that remembers.
 */
export function takeEdit(state: CaseState, changes: readonly Change[], parse: CaseParser = parseCase): Taken | Refusal[] {
  let wanted = changes;
  const drafts = new Map<string, Json>();
  while (drafts.size < MOST_DRAFTS) {
    const applied = applyChanges(state, wanted);
    const one = parse(applied.state.case);
    if (!Array.isArray(one)) return withDrafts(applied, one, changes, drafts);
    const text = findOwnText(applied.state, wanted, one);
    if (text === null) {
      const lacking = findLacking(wanted, one);
      if (lacking === null) return one;
      drafts.set(lacking.owner.at, { ...toDraft('', lacking.refusal), item: lacking.owner.to });
      wanted = wanted.filter(({ at }) => at !== lacking.owner.at);
      continue;
    }
    // one at a time: taking it out can move its neighbours
    const again = drafts.has(text.place);
    if (!again) drafts.set(text.place, toDraft(text.words, text.refusal));
    wanted = wanted.flatMap((change) => (change === text.owner ? without(change, text.place, again) : [change]));
  }
  return [refuse('too-many-unread', `${drafts.size} texts that cannot be read`, `at most ${MOST_DRAFTS} in one entry`)];
}

/** The first refusal that is about something this edit brings in. */
function findOwnText(state: CaseState, wanted: readonly Change[], refusals: readonly Refusal[]) {
  for (const refusal of refusals) {
    const place = CASE + refusal.place;
    const owner = wanted.find(({ at }) => place === at || place.startsWith(`${at}/`));
    if (owner?.to === undefined) continue;
    const value = place === owner.at ? owner.to : valueAtPlace(state, place);
    if (value !== undefined) return { owner, place, refusal, words: textOf(value) };
  }
  return null;
}

/** An item this edit brings in that still lacks something it must have. */
function findLacking(wanted: readonly Change[], refusals: readonly Refusal[]) {
  for (const refusal of refusals) {
    const owner = wanted.find(({ at }) => `${CASE}${refusal.place}`.startsWith(`${at}/`));
    const to = owner?.to;
    if (owner !== undefined && isTree(to)) return { owner: { ...owner, to }, refusal };
  }
  return null;
}

/** Text kept at its place, old drafts of places that are now read or gone taken away. */
function withDrafts(
  applied: ReturnType<typeof applyChanges<CaseState>>,
  one: Case,
  asked: readonly Change[],
  drafts: ReadonlyMap<string, Json>,
): Taken {
  const moved: Change[] = [];
  const lost = applied.conflicts.map(({ at }) => at);
  const given = new Set(asked.map(({ at }) => at));
  const items = [...drafts].filter(([, draft]) => isTree(draft) && 'item' in draft).map(([place]) => place);
  for (const [place, was] of Object.entries(applied.state.drafts)) {
    if (drafts.has(place) || given.has(draftPlace(place)) || lost.includes(place)) continue;
    const now = valueAtPlace(applied.state, place);
    const isBlank = now === undefined || (isTree(now) && now['state'] === 'notLooked');
    const answered = asked.some(({ at }) => place === at || (place.startsWith(`${at}/`) && !isBlank));
    const parent = toPlace(toPath(place).slice(0, -1));
    const homeless =
      valueAtPlace(applied.state, parent) === undefined && !items.some((item) => parent === item || parent.startsWith(`${item}/`));
    if (answered || homeless) moved.push({ at: draftPlace(place), was });
  }
  for (const [place, to] of drafts) {
    const was = applied.state.drafts[place];
    moved.push({ at: draftPlace(place), ...(was === undefined ? {} : { was }), to });
  }
  const { state, done } = applyChanges(applied.state, moved);
  return { state, one, done: [...applied.done, ...done], conflicts: applied.conflicts };
}

export function draftPlace(place: string): string {
  return toPlace(['drafts', place]);
}

/**
 * The change without the text at `place`: nothing of it where the text is all it brings, else the item with that member as one nobody
 * looked at, or with no such member where that is refused too.
 */
function without(change: Change, place: string, again: boolean): Change[] {
  if (place === change.at || typeof change.to !== 'object' || change.to === null) return [];
  const inside = { root: change.to } as { root: Json };
  const at = toPlace(['root', ...toPath(place.slice(change.at.length))]);
  const was = valueAtPlace(inside, at);
  const blank: Change = again ? { at, was } : { at, was, to: { state: 'notLooked' } };
  return [{ ...change, to: applyChanges(inside, [blank]).state.root }];
}

function isTree(value: Json | undefined): value is { readonly [key: string]: Json } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function textOf(value: Json): string {
  return typeof value === 'string' ? value : JSON.stringify(value);
}

function toDraft(text: string, { code, got, expected, suggestion }: Refusal): { [key: string]: Json } {
  return { text, refusal: { code, got, expected, ...(suggestion === undefined ? {} : { suggestion }) } };
}
