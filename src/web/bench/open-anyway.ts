import { applyChanges, valueAtPlace } from '../../app/casebook/apply-changes.ts';
import type { Change, Json } from '../../app/casebook/change.ts';
import { type CaseReader, listOf, newExhibit } from '../part/new-exhibit.ts';
import { newItemId } from '../state/place-parts.ts';
import type { Point, Tree } from './day-order.ts';
import { exhibitsOf, isOpen, keepInside } from './task/task.ts';

/** What is not measured any more, and why it was left. */
export interface LeftOut {
  readonly measure: string;
  readonly reason: string;
}

const WHAT: Readonly<Record<Point, string>> = { opening: 'opened', desoldering: 'desoldered', unwinding: 'unwound' };

type Leave = (reader: CaseReader, gone: Json) => readonly Change[];

const asExhibit =
  (kind: string, more: Tree, put: (gone: Json) => Tree): Leave =>
  (reader, gone) =>
    exhibitsOf(reader, kind, more).length > 0 ? [] : newExhibit(reader, kind, { ...more, ...put(gone) }).changes;
const inBody =
  (key: string): Leave =>
  (reader, gone) =>
    isOpen(exhibitsOf(reader, 'body').at(-1)?.[key]) ? keepInside('body', [key])(reader, { value: gone }) : [];

/** A short is asked for at each output; without outputs, once. */
const shortOfEachPort: Leave = (reader, gone) => {
  const ports = listOf(reader, 'ports').map((port) => ({ port: String(port['id']) }));
  const changes: Change[] = [];
  for (const port of ports.length === 0 ? [{}] : ports)
    changes.push(...asExhibit('event', { what: 'short', ...port }, (aftermath) => ({ aftermath }))(readerAfter(reader, changes), gone));
  return changes;
};

/** Fields that show at their own place what can never be read now. Every measurement stands with the event besides, with its reason. */
const LEAVE: Readonly<Record<string, readonly Leave[]>> = {
  touchBothWays: [asExhibit('touch', { quantity: 'touchCurrentRms' }, (value) => ({ value }))],
  plugDischarge: [asExhibit('touch', { quantity: 'pinsAfterUnplugging' }, (value) => ({ value, after: '2 s' }))],
  coldInsulation: [asExhibit('cold', { quantity: 'insulation' }, (value) => ({ value }))],
  enclosure: [inBody('seamOpens'), inBody('livePartTouchable')],
  short: [shortOfEachPort],
  workingVoltage: [asExhibit('workingVoltage', {}, (rms) => ({ rms }))],
};

/** The sample goes past a point of no return: what happened with its reasons, and what can never be read now, as one step. */
export function passPoint(reader: CaseReader, point: Point, left: readonly LeftOut[], at: string): readonly Change[] {
  const id = newItemId(WHAT[point] ?? 'event');
  const leftOut = left.map(({ measure, reason }) => ({ id: newItemId('left'), measure, because: reason }));
  const event = { id, at, what: WHAT[point] ?? '', ...(leftOut.length === 0 ? {} : { leftOut }) };
  const changes: Change[] = [{ at: `/case/events/${id}`, to: event }];
  const gone: Json = { state: 'cannotNow', since: id };
  for (const { measure } of left) for (const leave of LEAVE[measure] ?? []) changes.push(...leave(readerAfter(reader, changes), gone));
  return listOf(reader, 'events').length === 0 && reader.valueAt('/case/events') === undefined
    ? [{ at: '/case/events', to: [event] }, ...changes.slice(1)]
    : changes;
}

/** What stands at a place once the changes are in. */
export function readerAfter(reader: CaseReader, changes: readonly Change[]): CaseReader {
  const { state } = applyChanges({ case: reader.valueAt('/case') ?? {} }, changes);
  return { valueAt: (place) => valueAtPlace(state, place) };
}
