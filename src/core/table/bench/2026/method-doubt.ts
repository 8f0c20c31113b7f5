import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Half width that a distance has by the way it was taken, when nobody stated one. Rectangular. */
export const methodDoubt = defineTable({
  id: 'bench/2026/method-doubt',
  title: 'Doubt of a distance by method',
  source: cite('bench', 'what careful people reach on a board', 'common-practice'),
  lookUp: 'exact key',
  key: { name: 'method', unit: '', si: 'word', factor: 1 },
  columns: { halfWidth: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [
    ['microscope', 0.05],
    ['caliper', 0.1],
    ['gauge', 0.1],
    ['photo', 0.3],
  ],
});
