import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * How long a fuse bears a multiple of its rating: at least, and at most before it opens. Time-lag cartridges of sheet 5; `subminiature` are the
 * radial and surface-mounted ones.
 */
export const timeGates = defineTable({
  id: 'iec-60127/undated/time-gates',
  title: 'Time until a fuse opens, by multiples of its rating',
  source: cite('iec-60127', 'part 2, sheet 5', 'secondary', { alsoBy: ['data sheets of several fuse makers'] }),
  lookUp: 'exact key',
  key: { name: 'multiple of the rating', unit: '1', si: '1', factor: 1 },
  columns: {
    least: { unit: 's', si: 's', factor: 1 },
    most: { unit: 's', si: 's', factor: 1 },
    subminiatureLeast: { unit: 's', si: 's', factor: 1 },
    subminiatureMost: { unit: 's', si: 's', factor: 1 },
  },
  rows: [
    [1.5, 3600, null, null, null],
    [2.1, null, 1800, null, 120],
    [2.75, 0.75, 80, 0.4, 10],
    [4, 0.095, 5, 0.15, 3],
    [10, 0.01, 0.15, null, null],
  ],
});
