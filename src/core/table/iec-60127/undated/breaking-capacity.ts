import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Current that a miniature fuse of each letter breaks at 250 V a.c.: low, enhanced, high. Shown beside what kind of fuse was found, never deciding. */
export const breakingCapacity = defineTable({
  id: 'iec-60127/undated/breaking-capacity',
  title: 'Breaking capacity of miniature fuses',
  source: cite('iec-60127', 'part 2, standard sheets', 'memory'),
  lookUp: 'exact key',
  key: { name: 'letter', unit: '', si: 'word', factor: 1 },
  columns: { breaks: { unit: 'A', si: 'A', factor: 1 } },
  rows: [
    ['L', 35],
    ['E', 150],
    ['H', 1500],
  ],
  cellSources: {
    'H/breaks': cite('iec-60127', 'part 2, sheet 5', 'secondary', {
      alsoBy: ['fuse makers’ data sheets'],
      disagrees: ['some ratings of one maker: 500 A'],
    }),
    'L/breaks': cite('iec-60127', 'part 2, sheet 2: 35 A or ten times the rated current', 'memory'),
  },
});
