import type { Change, Json } from '../../app/casebook/change.ts';
import { STACK_WORDS } from '../../present/words/stack-words.ts';
import { type CaseReader, listOf } from '../part/new-exhibit.ts';
import { newItemId } from '../state/place-parts.ts';

export type Tree = Readonly<Record<string, Json>>;

/** What can come off next. A wall of the former is a layer of insulation in one solid piece. */
export type LayerKind = 'winding' | 'insulation' | 'formerWall';

const NOT_LOOKED: Json = { state: 'notLooked' };

/** Layers of one stack, outside in. */
export function layersOf(reader: CaseReader, stack: string): readonly Tree[] {
  const found = listOf(reader, 'exhibits').find((item) => item['id'] === stack)?.['outsideIn'];
  return Array.isArray(found) ? (found as readonly Tree[]) : [];
}

export function placeOfLayer(stack: string, layer: string, member?: string): string {
  return `/case/exhibits/${stack}/outsideIn/${layer}${member === undefined ? '' : `/${member}`}`;
}

/** A counted number; null when the count was lost, is doubtful or was never begun. */
export function countOf(item: Tree | null | undefined, member: 'turns' | 'layers'): number | null {
  const text = textOf(item?.[member]);
  return text !== null && /^\d+$/.test(text) ? Number(text) : null;
}

/** What was read, as typed; null for every other state. */
export function textOf(value: Json | undefined): string | null {
  const inner = isTree(value) ? value['v'] : value;
  return typeof inner === 'string' ? inner : null;
}

/** Whether a number can be counted up from here: it was counted before, or nobody has begun. */
export function canCount(item: Tree, member: 'turns' | 'layers'): boolean {
  const value = item[member];
  return countOf(item, member) !== null || value === undefined || value === '' || (isTree(value) && value['state'] === 'notLooked');
}

/** One more or one less: turns of a winding, layers of an insulation. A count that was lost is not gone on with. */
export function countBy(stack: string, item: Tree, by: 1 | -1): readonly Change[] {
  return stepMember(stack, item, countedIn(item), by, 0);
}

/** The winding goes on in its next row. */
export function nextRow(stack: string, item: Tree): readonly Change[] {
  return item['is'] === 'winding' ? stepMember(stack, item, 'layers', 1, 1) : [];
}

export function countedIn(item: Tree): 'turns' | 'layers' {
  return item['is'] === 'winding' ? 'turns' : 'layers';
}

function stepMember(stack: string, item: Tree, member: 'turns' | 'layers', by: 1 | -1, from: number): readonly Change[] {
  const next = (countOf(item, member) ?? from) + by;
  // nothing is wound in no turns: one back from one is a count that never began
  if (!canCount(item, member) || next < 0) return [];
  const value = item[member];
  if (isTree(value) && 'v' in value) return [changeOf(stack, item, `${member}/v`, value['v'], String(next))];
  return [changeOf(stack, item, member, value, next === 0 ? NOT_LOOKED : String(next))];
}

function changeOf(stack: string, item: Tree, member: string, was: Json | undefined, to: Json): Change {
  return { at: placeOfLayer(stack, String(item['id']), member), was, to };
}

/** A new layer under another, last of all where none is named; with its id. */
export function newLayer(
  layers: readonly Tree[],
  stack: string,
  kind: LayerKind,
  after?: string,
): { readonly id: string; readonly changes: readonly Change[] } {
  const item = kind === 'winding' ? blankWinding(layers) : kind === 'insulation' ? blankInsulation() : blankFormerWall();
  const id = String(item['id']);
  return { id, changes: [{ at: placeOfLayer(stack, id), to: item, ...(after === undefined ? {} : { after }) }] };
}

function blankWinding(layers: readonly Tree[]): Tree {
  const names = layers.map((layer) => layer['name']);
  let number = layers.filter((layer) => layer['is'] === 'winding').length + 1;
  while (names.includes(`W${number}`)) number += 1;
  return { id: newItemId('w'), is: 'winding', name: `W${number}`, turns: NOT_LOOKED, layers: '1', wireKind: NOT_LOOKED };
}

function blankInsulation(): Tree {
  return { id: newItemId('tape'), is: 'insulation', layers: '1', covers: NOT_LOOKED };
}

function blankFormerWall(): Tree {
  return { id: newItemId('wall'), is: 'insulation', material: STACK_WORDS.formerWall, layers: '1', covers: 'whole' };
}

export function isFormerWall(item: Tree): boolean {
  return textOf(item['material']) === STACK_WORDS.formerWall;
}

export function removeLayer(stack: string, item: Tree): readonly Change[] {
  return [{ at: placeOfLayer(stack, String(item['id'])), was: item }];
}

/** One place further out (-1) or in (1); nothing at the ends. */
export function moveLayer(layers: readonly Tree[], stack: string, item: Tree, by: 1 | -1): readonly Change[] {
  const index = layers.indexOf(item);
  const to = index + by;
  if (index < 0 || to < 0 || to >= layers.length) return [];
  // the whole list at once: a place that goes and comes back in one entry would be taken for another hand's
  return [{ at: `/case/exhibits/${stack}/outsideIn`, was: layers, to: layers.toSpliced(index, 1).toSpliced(to, 0, item) }];
}

function isTree(value: Json | undefined): value is Tree {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
