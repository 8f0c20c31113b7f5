import type { Change, Json } from '../../../app/casebook/change.ts';
import { type CaseReader, newExhibit } from '../../part/new-exhibit.ts';
import { newItemId } from '../../state/place-parts.ts';
import type { Tree } from '../day-order.ts';
import { MAINS_VOLTAGE, PORT, SUPPLY } from './asks.ts';
import { chosenOf, exhibitsOf, type Given, NOT_LOOKED, type PickOption, type Task } from './task.ts';

const rowsOf = (sweep: Tree): readonly Tree[] => ((sweep['table'] as Tree | undefined)?.['rows'] ?? []) as readonly Tree[];
const cellsOf = (row: Tree): readonly Json[] => (row['cells'] ?? []) as readonly Json[];

/** A sweep of one row at no load: voltage and input power with nothing connected. */
export const IDLE_TASKS: readonly Task[] = [
  {
    id: 'idle',
    entry: 'number',
    number: { key: 'idleVoltage', kind: 'voltage', units: ['V'] },
    other: { key: 'idlePower', kind: 'power', units: ['W', 'mW'] },
    asks: [PORT, MAINS_VOLTAGE, SUPPLY],
    keep: (reader, given) => {
      const columns = [
        { id: 'i', role: 'outputCurrent', unit: 'A' },
        { id: 'v', role: 'outputVoltage', unit: 'V' },
        { id: 'p', role: 'inputPower', unit: 'W' },
      ];
      const rows = [{ id: newItemId('r'), cells: ['0', given.value, given.other ?? NOT_LOOKED] }];
      const under = chosenOf(given.chosen, 'mains', 'supply');
      return newExhibit(reader, 'sweep', { ...chosenOf(given.chosen, 'port'), at: given.at, under, table: { columns, rows } }).changes;
    },
    kept: (reader) =>
      exhibitsOf(reader, 'sweep').flatMap((sweep) =>
        rowsOf(sweep).flatMap((row) => (cellsOf(row)[0] === '0' ? (cellsOf(row)[1] ?? []) : [])),
      ),
  },
];

/** What an output offers: a voltage and the current that goes with it. */
export const ADVERTISED_TASKS: readonly Task[] = [
  {
    id: 'offer',
    entry: 'number',
    number: { key: 'offerVoltage', kind: 'voltage', units: ['V'] },
    other: { key: 'offerCurrent', kind: 'current', units: ['A'], needed: true },
    asks: [PORT],
    keep: (reader, { value, other, chosen, at }) => {
      const offer: Tree = { id: newItemId('o'), voltage: value, current: other ?? '' };
      const found = exhibitsOf(reader, 'advertised', chosenOf(chosen, 'port')).at(-1);
      if (found === undefined) return newExhibit(reader, 'advertised', { ...chosenOf(chosen, 'port'), at, offers: [offer] }).changes;
      return [{ at: `/case/exhibits/${String(found['id'])}/offers/${String(offer['id'])}`, to: offer }];
    },
    kept: (reader) =>
      exhibitsOf(reader, 'advertised').flatMap((item) =>
        ((item['offers'] ?? []) as readonly Tree[]).map((offer): Json => `${String(offer['voltage'] ?? '')} ${String(offer['current'])}`),
      ),
  },
];

const underOf = (given: Given, start: string | null): Tree => ({
  ...chosenOf(given.chosen, 'mains'),
  ...(start === null ? {} : { start }),
});

/** Tries of one thing: each press is one try that went well or did not. A condition that differs begins a new event. */
function triesOf(id: string, what: string, start: 'cold' | 'hot' | null = null): Task {
  const own = (reader: CaseReader, matches: Tree): readonly Tree[] => exhibitsOf(reader, 'event', { what, ...matches });
  return {
    id,
    entry: 'tries',
    asks: [PORT, MAINS_VOLTAGE],
    keep: (reader, given) => {
      const under = underOf(given, start);
      const failed = given.value === false ? 1 : 0;
      const found = own(reader, { ...chosenOf(given.chosen, 'port'), under }).at(-1);
      if (found === undefined) {
        const more = { ...chosenOf(given.chosen, 'port'), what, at: given.at, under, tries: { made: 1, failed } };
        return newExhibit(reader, 'event', more).changes;
      }
      const at = `/case/exhibits/${String(found['id'])}/tries`;
      const was = found['tries'] as Tree;
      return [{ at, was, to: { ...was, made: Number(was['made']) + 1, failed: Number(was['failed']) + failed } }];
    },
    kept: (reader) =>
      own(reader, {})
        .filter((event) => start === null || ((event['under'] as Tree | undefined)?.['start'] ?? 'cold') === start)
        .flatMap((event) => (event['tries'] === undefined ? [] : [event['tries'] as Json])),
  };
}

/** One figure read off an event: a peak, a trough, the power taken at a short. */
function readingOf(id: string, what: string, name: string, kind: 'voltage' | 'power' | 'current', unit: string): Task {
  const readings = (event: Tree): readonly Tree[] => ((event['readings'] ?? []) as readonly Tree[]).filter((one) => one['name'] === name);
  return {
    id,
    entry: 'number',
    number: { key: id, kind, units: [unit] },
    asks: [PORT, MAINS_VOLTAGE],
    keep: (reader, given): readonly Change[] => {
      const reading: Tree = { id: newItemId('m'), name, value: given.value };
      const under = underOf(given, null);
      const found = exhibitsOf(reader, 'event', { what, ...chosenOf(given.chosen, 'port'), under }).at(-1);
      if (found !== undefined) return [{ at: `/case/exhibits/${String(found['id'])}/readings/${String(reading['id'])}`, to: reading }];
      const more = { ...chosenOf(given.chosen, 'port'), what, at: given.at, under, tries: { made: 1, failed: 0 }, readings: [reading] };
      return newExhibit(reader, 'event', more).changes;
    },
    kept: (reader) => exhibitsOf(reader, 'event', { what }).flatMap((event) => readings(event).map((one) => one['value'] as Json)),
  };
}

export const POWER_UP_TASKS: readonly Task[] = [triesOf('firstStart', 'start', 'cold')];

export const EVENT_TASKS: readonly Task[] = [
  triesOf('idleTries', 'idle'),
  triesOf('starts', 'start', 'cold'),
  triesOf('brownOuts', 'brownOut'),
  readingOf('plugInPeak', 'plugIn', 'peak', 'voltage', 'V'),
  readingOf('stepPeak', 'step', 'peak', 'voltage', 'V'),
  readingOf('stepTrough', 'step', 'trough', 'voltage', 'V'),
];

const AFTERMATHS: readonly PickOption[] = ['recovers', 'staysOff', 'dead', 'smoke', 'flame', 'livePart'].map((value) => ({
  key: value,
  value,
}));

export const HOT_TASKS: readonly Task[] = [
  triesOf('hotStarts', 'start', 'hot'),
  triesOf('shorts', 'short'),
  readingOf('shortPower', 'short', 'inputPower', 'power', 'W'),
  {
    id: 'aftermath',
    entry: 'pick',
    picks: AFTERMATHS,
    asks: [],
    keep: (reader, { value, at }) => {
      const found = exhibitsOf(reader, 'event', { what: 'short' }).at(-1);
      if (found === undefined)
        return newExhibit(reader, 'event', { what: 'short', at, tries: { made: 1, failed: 0 }, aftermath: value }).changes;
      return [{ at: `/case/exhibits/${String(found['id'])}/aftermath`, was: found['aftermath'], to: value }];
    },
    kept: (reader) =>
      exhibitsOf(reader, 'event', { what: 'short' }).flatMap((event) => (event['aftermath'] === undefined ? [] : [event['aftermath']])),
  },
];
