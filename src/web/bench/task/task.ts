import { sameJson } from '../../../app/casebook/apply-changes.ts';
import type { Change, Json } from '../../../app/casebook/change.ts';
import type { Kind } from '../../../core/quantity/unit.ts';
import { type CaseReader, listOf, newExhibit } from '../../part/new-exhibit.ts';
import type { Tree } from '../day-order.ts';

export interface Option {
  readonly value: string;
  /** What the person sees; without it the words of the choice itself. */
  readonly name?: string;
}

/** Something that has to be said before a reading can be kept: it is never taken for granted. */
export interface Ask {
  readonly key: string;
  readonly options: (reader: CaseReader) => readonly Option[];
  /** Another ask whose choice is none of these: no way leads from a thing to itself. */
  readonly not?: string;
  /** Asked again for every reading: what changes from one to the next. */
  readonly everyTime?: true;
  /** Something that is not on the list yet can be named where it is asked for. */
  readonly names?: NewNames;
  /** Asked for although nothing is on the list: there is nothing that any unit has. */
  readonly needsName?: true;
}

/** What can be named at the bench: the list it joins, and what it can be, one key each. */
export interface NewNames {
  readonly list: 'conductors' | 'places' | 'parts' | 'ports';
  readonly as: readonly NewKind[];
}
export interface NewKind {
  /** Key of its words. */
  readonly key: string;
  readonly item: Tree;
}

export interface NumberEntry {
  /** Key of the words over the field. */
  readonly key: string;
  readonly kind: Kind;
  /** Units offered, the usual one first. */
  readonly units: readonly string[];
}

export interface Given {
  /** A reading as text with its unit, a mark, or what was picked. */
  readonly value: Json;
  /** The other number of a pair, when it was entered. */
  readonly other?: Json;
  readonly chosen: Readonly<Record<string, string>>;
  /** Local time at which it was kept. */
  readonly at: string;
}

interface TaskBase {
  readonly id: string;
  readonly asks: readonly Ask[];
  readonly keep: (reader: CaseReader, given: Given) => readonly Change[];
  /** What is kept of it so far, oldest first. */
  readonly kept: (reader: CaseReader) => readonly Json[];
}

/** One thing to read, pick or try at the bench. */
export type Task =
  | (TaskBase & { readonly entry: 'number'; readonly number: NumberEntry; readonly other?: NumberEntry & { readonly needed?: true } })
  | (TaskBase & { readonly entry: 'pick'; readonly picks: readonly PickOption[] })
  | (TaskBase & { readonly entry: 'tries' })
  | { readonly entry: 'sweep' | 'turns'; readonly id: string };

export interface PickOption {
  /** Key of its words. */
  readonly key: string;
  readonly value: Json;
}

export const YES_NO: readonly PickOption[] = [
  { key: 'yes', value: true },
  { key: 'no', value: false },
];

export const NOT_LOOKED: Json = { state: 'notLooked' };

export function isOpen(value: Json | undefined): boolean {
  return value === undefined || sameJson(value, NOT_LOOKED);
}

/** Options from a list of the case, by id, with the name or reference that it has there. */
export function optionsFrom(list: string, wanted: (item: Tree) => boolean = () => true) {
  return (reader: CaseReader): readonly Option[] =>
    listOf(reader, list)
      .filter(wanted)
      .map((item) => ({ value: String(item['id']), name: String(item['name'] ?? item['ref'] ?? item['id']) }));
}

export function choices(...values: readonly string[]) {
  return (): readonly Option[] => values.map((value) => ({ value }));
}

export function exhibitsOf(reader: CaseReader, kind: string, matches: Tree = {}): readonly Tree[] {
  return listOf(reader, 'exhibits').filter(
    (item) =>
      item['kind'] === kind && item['struck'] === undefined && Object.entries(matches).every(([key, value]) => sameJson(item[key], value)),
  );
}

/** Keeps a value in the one exhibit of its kind (body, board), made when it is the first; `path` may lead into a member of it. */
export function keepInside(kind: string, path: readonly [string] | readonly [string, string], more: Tree = {}) {
  return (reader: CaseReader, { value }: Pick<Given, 'value'>): readonly Change[] => {
    const [outer, inner] = path;
    const found = exhibitsOf(reader, kind).at(-1);
    if (found === undefined)
      return newExhibit(reader, kind, { ...more, [outer]: inner === undefined ? value : { [inner]: value } }).changes;
    const at = `/case/exhibits/${String(found['id'])}`;
    const missing = Object.entries(more).flatMap(([key, to]) => (found[key] === undefined ? [{ at: `${at}/${key}`, to }] : []));
    const held = found[outer];
    if (inner !== undefined && held === undefined) return [...missing, { at: `${at}/${outer}`, to: { [inner]: value } }];
    const was = inner === undefined ? held : (held as Tree)[inner];
    return [...missing, { at: `${at}/${outer}${inner === undefined ? '' : `/${inner}`}`, was, to: value }];
  };
}

export function keptInside(kind: string, path: readonly [string] | readonly [string, string]) {
  return (reader: CaseReader): readonly Json[] =>
    exhibitsOf(reader, kind).flatMap((item) => {
      const [outer, inner] = path;
      const value = inner === undefined ? item[outer] : (item[outer] as Tree | undefined)?.[inner];
      return value === undefined || isOpen(value) ? [] : [value];
    });
}

/** Keeps a value as an exhibit of its own. `more` says what else goes in, from what was chosen. */
export function keepAsExhibit(kind: string, more: (given: Given, reader: CaseReader) => Tree) {
  return (reader: CaseReader, given: Given): readonly Change[] =>
    newExhibit(reader, kind, { at: given.at, value: given.value, ...more(given, reader) }).changes;
}

export function keptAsExhibit(kind: string, matches: Tree) {
  return (reader: CaseReader): readonly Json[] =>
    exhibitsOf(reader, kind, matches).flatMap((item) => (isOpen(item['value']) ? [] : [item['value'] as Json]));
}

/** Members of an object that were chosen; what nobody chose is left out. */
export function chosenOf(chosen: Given['chosen'], ...keys: readonly string[]): Tree {
  return Object.fromEntries(keys.flatMap((key) => (chosen[key] === undefined ? [] : [[key, chosen[key]]])));
}
