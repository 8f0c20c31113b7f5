import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Separable layers that household appliances ask for. Layers that are bonded count as one unless they can be told apart. A comparison. */
export const thinSheet = defineTable({
  id: 'iec-60335-1/2010/thin-sheet',
  title: 'Separable layers, household appliances',
  source: cite('iec-60335-1', 'clause 29.3', 'secondary', {
    alsoBy: ['a decision of the certifiers’ committee, as copied on a forum: two layers supplementary, three reinforced'],
  }),
  lookUp: 'exact key',
  key: { name: 'insulation', unit: '', si: 'word', factor: 1 },
  columns: { layers: { unit: '1', si: '1', factor: 1 } },
  rows: [
    ['supplementary', 2],
    ['reinforced', 3],
  ],
});
