import { keepInside, keptInside, type PickOption, type Task, YES_NO } from './task.ts';

const PLUG_SYSTEMS = ['flatTwoPin', 'bs1363', 'nema1', 'as3112', 'otherInBody', 'cord'];

const body = (id: string, path: readonly [string] | readonly [string, string], kind: 'mass' | 'length', unit: string): Task => ({
  id,
  entry: 'number',
  number: { key: id, kind, units: [unit] },
  asks: [],
  keep: keepInside('body', path),
  kept: keptInside('body', path),
});
const yesNo = (id: string, path: readonly [string] | readonly [string, string]): Task => ({
  id,
  entry: 'pick',
  picks: YES_NO,
  asks: [],
  keep: keepInside('body', path),
  kept: keptInside('body', path),
});

/** Plug, body and seam: what a scale, a caliper and a nail tell. */
export const BODY_TASKS: readonly Task[] = [
  {
    id: 'plugSystem',
    entry: 'pick',
    picks: PLUG_SYSTEMS.map((value): PickOption => ({ key: value, value })),
    asks: [],
    keep: keepInside('body', ['plugSystem']),
    kept: keptInside('body', ['plugSystem']),
  },
  body('mass', ['mass'], 'mass', 'g'),
  body('pinDiameter', ['pin', 'diameter'], 'length', 'mm'),
  body('pinLength', ['pin', 'length'], 'length', 'mm'),
  yesNo('pinSleeved', ['pin', 'sleeved']),
  body('centreOfMass', ['centreOfMass'], 'length', 'mm'),
  yesNo('seamOpens', ['seamOpens']),
  yesNo('livePartTouchable', ['livePartTouchable']),
];
