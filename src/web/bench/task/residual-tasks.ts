import type { Json } from '../../../app/casebook/change.ts';
import { newExhibit } from '../../part/new-exhibit.ts';
import type { Tree } from '../day-order.ts';
import { type Ask, exhibitsOf, type Given, isOpen, NOT_LOOKED, optionsFrom, type Task } from './task.ts';

const ACROSS: Ask = {
  key: 'across',
  options: optionsFrom('parts', (part) => {
    const kind = part['kind'];
    return /[cC]apacitor$/.test(String(typeof kind === 'object' && kind !== null ? (kind as Tree)['v'] : kind));
  }),
};
const SINCE = { key: 'sinceUnplugging', kind: 'time', units: ['s', 'min'] } as const;
const readOf = ({ value, other }: Given): Tree => ({ value, ...(other === undefined ? {} : { after: other }) });

/** What is left on the capacitor: at once, and once more a minute later, because charge comes back. */
export const RESIDUAL_TASKS: readonly Task[] = [
  {
    id: 'residual',
    entry: 'number',
    number: { key: 'residual', kind: 'voltage', units: ['V', 'mV'] },
    other: SINCE,
    asks: [ACROSS],
    keep: (reader, given) => {
      const { across } = given.chosen;
      return newExhibit(reader, 'residual', { at: given.at, ...readOf(given), ...(across === undefined ? {} : { across }) }).changes;
    },
    kept: (reader) => exhibitsOf(reader, 'residual').flatMap((item) => (isOpen(item['value']) ? [] : [item['value'] as Json])),
  },
  {
    id: 'residualLater',
    entry: 'number',
    number: { key: 'residualLater', kind: 'voltage', units: ['V', 'mV'] },
    other: SINCE,
    asks: [],
    keep: (reader, given) => {
      const found = exhibitsOf(reader, 'residual').at(-1);
      const later = readOf(given);
      if (found === undefined) return newExhibit(reader, 'residual', { at: given.at, value: NOT_LOOKED, later }).changes;
      return [{ at: `/case/exhibits/${String(found['id'])}/later`, was: found['later'], to: later }];
    },
    kept: (reader) =>
      exhibitsOf(reader, 'residual').flatMap((item) => {
        const later = item['later'] as Tree | undefined;
        return later === undefined || isOpen(later['value']) ? [] : [later['value'] as Json];
      }),
  },
];
