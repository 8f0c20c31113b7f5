import type { Json } from '../../../app/casebook/change.ts';
import { BENCH_NOTES } from '../../../present/words/bench-words.ts';

import type { Tree } from '../day-order.ts';
import { FROM, TO } from './asks.ts';
import {
  type Ask,
  choices,
  chosenOf,
  exhibitsOf,
  keepAsExhibit,
  keepInside,
  keptAsExhibit,
  keptInside,
  type PickOption,
  type Task,
  YES_NO,
} from './task.ts';

const PATH: Ask = { key: 'path', options: choices('air', 'surface', 'printedWiring'), everyTime: true };
const METHOD: Ask = { key: 'distanceMethod', options: choices('caliper', 'photo', 'gauge', 'microscope') };
const FIRST_PARTS = ['cartridge', 'wire', 'fusibleResistor', 'track', 'plainResistor'];
const RECTIFIERS = ['bridge', 'singleDiode', 'doubler'];

const toPicks = (values: readonly string[]): readonly PickOption[] => values.map((value) => ({ key: value, value }));
const absent = (because: string): Json => ({ state: 'absent', because });

const DROP_HEIGHT = '1 m'; // IEC 62368-1 annex T.7, as remembered: three times from 1 m

/** The drop: a try has failed when the case opened or a part came off. */
export const DROP_TASKS: readonly Task[] = [
  {
    id: 'drops',
    entry: 'tries',
    asks: [],
    keep: (reader, { value }) => {
      const was = exhibitsOf(reader, 'body').at(-1)?.['drops'] as Tree | undefined;
      const drops = { ...was, made: Number(was?.['made'] ?? 0) + 1, failed: Number(was?.['failed'] ?? 0) + (value === false ? 1 : 0) };
      return keepInside('body', ['drops'], { dropHeight: DROP_HEIGHT })(reader, { value: drops });
    },
    kept: keptInside('body', ['drops']),
  },
];

/** Distances between named conductors and what the board is as a whole. */
export const BOARD_TASKS: readonly Task[] = [
  {
    id: 'distance',
    entry: 'number',
    number: { key: 'distance', kind: 'length', units: ['mm'] },
    asks: [FROM, TO, PATH, METHOD],
    keep: keepAsExhibit('distance', ({ chosen }) => {
      const { between, and, distanceMethod } = chosen;
      return {
        ...(between === undefined || and === undefined ? {} : { from: between, to: and }),
        ...chosenOf(chosen, 'path'),
        ...(distanceMethod === undefined ? {} : { method: distanceMethod }),
      };
    }),
    kept: keptAsExhibit('distance', {}),
  },
  {
    id: 'firstPart',
    entry: 'pick',
    picks: [...toPicks(FIRST_PARTS), { key: 'noFuse', value: absent(BENCH_NOTES.noFuse) }],
    asks: [],
    keep: keepInside('board', ['fuse']),
    kept: keptInside('board', ['fuse']),
  },
  {
    id: 'rectifier',
    entry: 'pick',
    picks: toPicks(RECTIFIERS),
    asks: [],
    keep: keepInside('board', ['rectifier']),
    kept: keptInside('board', ['rectifier']),
  },
  {
    id: 'wiresHeld',
    entry: 'pick',
    picks: YES_NO,
    asks: [],
    keep: keepInside('board', ['wiresHeld']),
    kept: keptInside('board', ['wiresHeld']),
  },
];
