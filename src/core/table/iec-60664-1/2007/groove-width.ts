import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Least width X at which a slot or groove counts along its walls; a narrower one is taken as bridged straight across. */
export const grooveWidth = defineTable({
  id: 'iec-60664-1/2007/groove-width',
  title: 'Least width of grooves that lengthen a creepage distance',
  source: cite('iec-60664-1', 'clause 6.2, dimension X', 'secondary', {
    alsoBy: ['a connector maker’s catalogue, measuring clearance and creepage'],
  }),
  lookUp: 'exact key',
  key: { name: 'pollution degree', unit: '', si: 'word', factor: 1 },
  columns: { X: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [
    ['1', 0.25],
    ['2', 1],
    ['3', 1.5],
  ],
});
