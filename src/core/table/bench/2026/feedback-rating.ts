import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Most continuous current of the parts of a feedback path at room temperature: LED of an optocoupler, cathode of a shunt reference. */
export const feedbackRating = defineTable({
  id: 'bench/2026/feedback-rating',
  title: 'Current ratings of feedback parts',
  source: cite('bench', 'data sheets of the 817 kind and of 431-type references, several makers', 'memory'),
  lookUp: 'exact key',
  key: { name: 'part', unit: '', si: 'word', factor: 1 },
  columns: { current: { unit: 'mA', si: 'A', factor: 1e-3 } },
  rows: [
    ['817', 50],
    ['431', 100],
  ],
});
