import type { Json } from '../../../app/casebook/change.ts';
import { newExhibit } from '../../part/new-exhibit.ts';
import { newItemId } from '../../state/place-parts.ts';
import type { Tree } from '../day-order.ts';
import { AGAINST, DRAWS, INSIDE_PLACE, loadsOf, MAINS_VOLTAGE, PLACE, PORT, PROBED, SUPPLY } from './asks.ts';
import { type Ask, choices, chosenOf, exhibitsOf, type Given, NOT_LOOKED, type Task } from './task.ts';

const BY: Ask = { key: 'by', options: choices('contact', 'infrared') };
const MS_PER_MINUTE = 60_000;

/** Under which conditions heat was read: without load, mains, cover and minutes it compares with nothing. */
function underOf({ chosen }: Given, cover: 'closed' | 'open'): Tree {
  return { ...chosenOf(chosen, 'mains'), cover, ...loadsOf(chosen) };
}

/** A time as "2026-03-04T10:31:05" in milliseconds; both ends of a difference are the same bench's clock. */
function toMs(local: string): number {
  return Date.parse(`${local}Z`);
}

/** Minutes from the first row of a soak to now, to a tenth. */
export function minutesSince(start: string, now: string): string {
  return ((toMs(now) - toMs(start)) / MS_PER_MINUTE).toFixed(1);
}

export const SOAK_TASKS: readonly Task[] = [
  {
    id: 'soakRow',
    entry: 'number',
    number: { key: 'soakRow', kind: 'temperature', units: ['°C'] },
    other: { key: 'ambient', kind: 'temperature', units: ['°C'] },
    asks: [PORT, DRAWS, MAINS_VOLTAGE],
    keep: (reader, given) => {
      const under = underOf(given, 'closed');
      const found = exhibitsOf(reader, 'soak', { under }).at(-1);
      const start = String(found?.['at'] ?? given.at);
      const row = { id: newItemId('r'), cells: [minutesSince(start, given.at), given.value, given.other ?? NOT_LOOKED] };
      if (found !== undefined) return [{ at: `/case/exhibits/${String(found['id'])}/table/rows/${row.id}`, to: row }];
      const made = newExhibit(reader, 'soak', { at: given.at, under });
      const last = made.changes.at(-1);
      const soak = last?.to as Tree;
      return [...made.changes.slice(0, -1), { at: last?.at ?? '', to: { ...soak, table: { ...(soak['table'] as Tree), rows: [row] } } }];
    },
    kept: (reader) =>
      exhibitsOf(reader, 'soak').flatMap((soak) => {
        const rows = ((soak['table'] as Tree)['rows'] ?? []) as readonly Tree[];
        return rows.flatMap((row) => (row['cells'] as readonly Json[])[1] ?? []);
      }),
  },
  spot('spotOutside', PLACE, 'closed'),
];

function spot(id: string, place: Ask, cover: 'closed' | 'open'): Task {
  return {
    id,
    entry: 'number',
    number: { key: id, kind: 'temperature', units: ['°C'] },
    other: { key: 'minutes', kind: 'time', units: ['min'] },
    asks: [place, BY, PORT, DRAWS, MAINS_VOLTAGE],
    keep: (reader, given) => {
      const made = newExhibit(reader, 'spots', {
        at: given.at,
        under: { ...underOf(given, cover), ...(given.other === undefined ? {} : { minutes: given.other }) },
      });
      const last = made.changes.at(-1);
      const spots = last?.to as Tree;
      const where = given.chosen[place.key];
      const rows = (spots['rows'] as readonly Tree[]).map((row) => ({
        ...row,
        ...chosenOf(given.chosen, 'by'),
        ...(where === undefined ? {} : { place: where }),
        value: given.value,
      }));
      return [...made.changes.slice(0, -1), { at: last?.at ?? '', to: { ...spots, rows } }];
    },
    kept: (reader) =>
      exhibitsOf(reader, 'spots')
        .filter((spots) => ((spots['under'] as Tree | undefined)?.['cover'] === 'open') === (cover === 'open'))
        .flatMap((spots) => (spots['rows'] as readonly Tree[]).map((row) => row['value'] as Json)),
  };
}

/** Cover off and live: marks only, filled in from the camera or the log. */
export const THERMAL_TASKS: readonly Task[] = [spot('spotInside', INSIDE_PLACE, 'open')];

function working(id: string, member: 'rms' | 'peak'): Task {
  return {
    id,
    entry: 'number',
    number: { key: id, kind: 'voltage', units: ['V'] },
    asks: [PROBED, AGAINST, MAINS_VOLTAGE, SUPPLY],
    keep: (reader, { value, chosen, at }) => {
      const { probed, against } = chosen;
      const pair = probed === undefined || against === undefined ? {} : { between: [probed, against] };
      return newExhibit(reader, 'workingVoltage', { at, ...pair, under: chosenOf(chosen, 'mains', 'supply'), [member]: value }).changes;
    },
    kept: (reader) => exhibitsOf(reader, 'workingVoltage').flatMap((item) => (item[member] === undefined ? [] : [item[member]])),
  };
}

export const WAVEFORM_TASKS: readonly Task[] = [working('workingRms', 'rms'), working('workingPeak', 'peak')];
