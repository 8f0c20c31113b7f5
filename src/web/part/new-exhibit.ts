import type { Change, Json } from '../../app/casebook/change.ts';
import type { StepName } from '../../app/casebook/desk.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { newItemId } from '../state/place-parts.ts';

type Tree = Readonly<Record<string, Json>>;

const NOT_LOOKED: Json = { state: 'notLooked' };

/** Conductors that any unit has, made when the first reading needs them. */
export const PINS = { id: 'pins', name: CASE_PAGE.plugPins, side: 'mains' };
const OUTPUT = { id: 'output', name: 'output', side: 'output' };

/** Whoever can say what stands at a place of the case. */
export interface CaseReader {
  readonly valueAt: (place: string) => Json | undefined;
}

/** Who can take changes too. */
export interface CaseWriter extends CaseReader {
  readonly change: (changes: readonly Change[], step: string, name: StepName) => void;
}

/** Adds an exhibit as one step of undo; `first` goes with it, a file it is taken from. Answers its id. */
export function addExhibit(store: CaseWriter, kind: string, more: Tree = {}, first: readonly Change[] = []): string {
  const { id, changes } = newExhibit(store, kind, more);
  store.change([...first, ...changes], newItemId('add'), { key: 'addExhibit', args: { kind } });
  return id;
}

/**
 * A new exhibit with the least it needs, and what it refers to if this is the first of its kind: an output for a sweep, two conductors
 * for a distance.
 */
export function newExhibit(
  reader: CaseReader,
  kind: string,
  more: Tree = {},
): { readonly id: string; readonly changes: readonly Change[] } {
  const listed = listOf(reader, 'exhibits').map((item) => String(item['id']));
  const id = freeId(kind, listed);
  const made = new Made(reader);
  const exhibit = { id, kind, ...dayOf(reader), ...(BLANKS[kind]?.(made) ?? {}), ...more };
  return { id, changes: [...made.changes, { at: `/case/exhibits/${id}`, to: exhibit }] };
}

/** What a new exhibit refers to: the first there is, or one made for it. */
class Made {
  readonly changes: Change[] = [];
  readonly store: CaseReader;

  constructor(store: CaseReader) {
    this.store = store;
  }

  port(): string {
    return this.#first('ports', { id: 'out-1', name: 'output 1', kind: NOT_LOOKED, levels: [] });
  }
  part(ref: string): string {
    return this.#first('parts', { id: ref.toLowerCase(), ref, kind: NOT_LOOKED });
  }
  place(): string {
    return this.#first('places', { id: 'case', name: 'case', outside: true });
  }
  mains(): string {
    return this.#conductor('mains', PINS);
  }
  output(): string {
    return this.#conductor('output', OUTPUT);
  }

  #conductor(side: string, blank: Tree): string {
    const found = listOf(this.store, 'conductors').find(
      (item) => item['side'] === side || (item['side'] as Tree | undefined)?.['v'] === side,
    );
    return found === undefined ? this.#make('conductors', blank) : String(found['id']);
  }
  #first(list: string, blank: Tree): string {
    const found = listOf(this.store, list)[0];
    return found === undefined ? this.#make(list, blank) : String(found['id']);
  }
  #make(list: string, blank: Tree): string {
    const at = `/case/${list}/${String(blank['id'])}`;
    if (!this.changes.some((change) => change.at === at)) this.changes.push({ at, to: blank });
    return String(blank['id']);
  }
}

const rows = (columns: readonly Tree[]): Json => ({ columns, rows: [] }) as unknown as Json;

const BLANKS: Readonly<Record<string, (made: Made) => Tree>> = {
  label: () => ({ claims: [], marks: [] }),
  body: () => ({ plug: NOT_LOOKED }),
  cold: (made) => ({ quantity: 'insulation', between: [made.mains(), made.output()], value: NOT_LOOKED }),
  touch: (made) => ({ quantity: 'touchCurrentRms', from: made.output(), method: 'network', value: NOT_LOOKED, under: {} }),
  advertised: (made) => ({ port: made.port(), by: '', offers: [] }),
  sweep: (made) => ({
    port: made.port(),
    order: 'up',
    sense: 'socket',
    under: {},
    table: rows([
      { id: 'i', role: 'outputCurrent', unit: 'A' },
      { id: 'v', role: 'outputVoltage', unit: 'V' },
      { id: 'p', role: 'inputPower', unit: 'W' },
    ]),
  }),
  event: (made) => ({ port: made.port(), what: 'start', tries: { made: 0, failed: 0 }, readings: [] }),
  residual: () => ({ value: NOT_LOOKED }),
  ripple: (made) => ({ port: made.port(), value: NOT_LOOKED, bandwidth: '20 MHz', fixture: NOT_LOOKED }),
  earthSwing: (made) => ({ port: made.port(), value: NOT_LOOKED }),
  spots: (made) => ({ under: {}, rows: [{ id: newItemId('s'), place: made.place(), value: NOT_LOOKED, by: 'contact' }] }),
  soak: (made) => ({
    under: {},
    table: rows([
      { id: 't', unit: 'min' },
      { id: 'a', role: 'temperature', of: made.place(), unit: '°C' },
      { id: 'b', role: 'ambient', unit: '°C' },
    ]),
  }),
  thermalPicture: () => ({ under: {}, file: '', scale: { unit: '°C' }, regions: [] }),
  distance: (made) => ({ from: made.mains(), to: made.output(), path: 'surface', value: NOT_LOOKED, method: 'caliper' }),
  board: () => ({ fuse: NOT_LOOKED, rectifier: NOT_LOOKED }),
  stack: (made) => ({ part: made.part('T1'), core: NOT_LOOKED, outsideIn: [] }),
  workingVoltage: (made) => ({ between: [made.mains(), made.output()], under: {} }),
};

function dayOf(store: CaseReader): Tree {
  const last = listOf(store, 'days').at(-1);
  return last === undefined ? {} : { day: String(last['id']) };
}

export function listOf(store: CaseReader, list: string): readonly Tree[] {
  const found = store.valueAt(`/case/${list}`);
  return Array.isArray(found) ? (found as readonly Tree[]) : [];
}

function freeId(kind: string, taken: readonly string[]): string {
  const slug = kind.replace(/([A-Z])/g, (letter) => `-${letter.toLowerCase()}`);
  for (let number = 1; ; number += 1) if (!taken.includes(`${slug}-${number}`)) return `${slug}-${number}`;
}
