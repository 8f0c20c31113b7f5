import type { Change, Json } from '../../app/casebook/change.ts';
import type { WorkspaceView } from '../../present/workspace/workspace-view.ts';
import { type CaseReader, newExhibit } from '../part/new-exhibit.ts';
import { countOf } from '../stack/layer-edit.ts';
import { newItemId } from '../state/place-parts.ts';
import type { Tree } from './day-order.ts';
import { exhibitsOf, NOT_LOOKED } from './task/task.ts';

/** What came off so far, outside in. */
export interface Wound {
  readonly stack: string | null;
  readonly items: readonly Tree[];
}

export function woundOf(reader: CaseReader): Wound {
  const stack = exhibitsOf(reader, 'stack').at(-1);
  return { stack: stack === undefined ? null : String(stack['id']), items: (stack?.['outsideIn'] ?? []) as readonly Tree[] };
}

/** The winding that is being counted: the last thing, when it is one. */
export function currentWinding({ items }: Wound): Tree | null {
  const last = items.at(-1);
  return last?.['is'] === 'winding' ? last : null;
}

/** One turn more or less. The first turn after a tape begins a winding; a lost count goes on only with the next winding. */
export function addTurns(reader: CaseReader, by: 1 | -1): readonly Change[] {
  const wound = woundOf(reader);
  const winding = currentWinding(wound);
  if (winding === null) return by < 0 ? [] : addItem(reader, newWinding(wound));
  const turns = countOf(winding, 'turns');
  if (turns === null || turns + by < 0) return [];
  return [changeOf(wound, winding, 'turns', String(turns + by))];
}

export function beginWinding(reader: CaseReader): readonly Change[] {
  const item = newWinding(woundOf(reader));
  return addItem(reader, { ...item, turns: '0' });
}

export function addLayer(reader: CaseReader): readonly Change[] {
  const wound = woundOf(reader);
  const winding = currentWinding(wound);
  if (winding === null) return [];
  return [changeOf(wound, winding, 'layers', String((countOf(winding, 'layers') ?? 1) + 1))];
}

/** Tape shows: so many layers of it. Said again before the next turn, it corrects the number. */
export function showTape(reader: CaseReader, layers: number): readonly Change[] {
  const wound = woundOf(reader);
  const last = wound.items.at(-1);
  if (last?.['is'] === 'insulation') return [changeOf(wound, last, 'layers', String(layers))];
  return addItem(reader, { id: newItemId('tape'), is: 'insulation', layers: String(layers), covers: NOT_LOOKED });
}

export function setItem(reader: CaseReader, id: string, member: string, to: Json): readonly Change[] {
  const wound = woundOf(reader);
  const item = wound.items.find((one) => one['id'] === id);
  return item === undefined ? [] : [changeOf(wound, item, member, to)];
}

export function loseCount(reader: CaseReader, because: string): readonly Change[] {
  const wound = woundOf(reader);
  const winding = currentWinding(wound);
  return winding === null ? [] : [changeOf(wound, winding, 'turns', { state: 'unknown', because })];
}

/** The check of the insulation between windings has failed, and nothing more of the stack is proposed: it cannot get worse. */
export function mayStop({ rows, next }: Pick<WorkspaceView, 'rows' | 'next'>): boolean {
  const failed = rows.some(({ check, outcome }) => check === 'shock/winding-insulation' && outcome === 'fail');
  return failed && !next.some(({ measure }) => measure === 'stack');
}

function newWinding({ items }: Wound): Tree {
  const number = items.filter((item) => item['is'] === 'winding').length + 1;
  return { id: newItemId('w'), is: 'winding', name: `W${number}`, turns: '1', layers: '1', wireKind: NOT_LOOKED };
}

function addItem(reader: CaseReader, item: Tree): readonly Change[] {
  const { stack } = woundOf(reader);
  if (stack === null) return newExhibit(reader, 'stack', { outsideIn: [item] }).changes;
  return [{ at: `/case/exhibits/${stack}/outsideIn/${String(item['id'])}`, to: item }];
}

function changeOf({ stack }: Wound, item: Tree, member: string, to: Json): Change {
  return { at: `/case/exhibits/${stack}/outsideIn/${String(item['id'])}/${member}`, was: item[member], to };
}
