import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** How long an American supplemental fuse takes at most at a multiple of its rating. */
export const gates = defineTable({
  id: 'ul-248-14/undated/gates',
  title: 'Time until an American fuse opens, by multiples of its rating',
  source: cite('ul-248-14', 'time-current requirements, to 30 A', 'secondary', { alsoBy: ['a fuse maker’s guide'] }),
  lookUp: 'exact key',
  key: { name: 'multiple of the rating', unit: '1', si: '1', factor: 1 },
  columns: { most: { unit: 's', si: 's', factor: 1 } },
  rows: [
    [1.35, 3600],
    [2, 120],
  ],
});
