import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Test voltage of circuits on the mains whose working voltage stays below 530 V peak, older edition. Volts rms. A comparison line. */
export const strength = defineTable({
  id: 'iec-60950-1/2005/strength',
  title: 'Electric strength, older edition',
  source: cite('iec-60950-1', 'table 5B', 'secondary', {
    alsoBy: ['a maker of winding wire: 1500 V basic, 3000 V reinforced', 'a published test report of an adapter: 530 V peak, 3000 V'],
  }),
  lookUp: 'exact key',
  key: { name: 'insulation', unit: '', si: 'word', factor: 1 },
  columns: { rms: { unit: 'V rms', si: 'V', factor: 1 } },
  rows: [
    ['basic', 1500],
    ['reinforced', 3000],
  ],
});
