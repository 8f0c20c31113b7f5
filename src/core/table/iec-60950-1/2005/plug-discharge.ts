import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** What is left of the starting voltage after one second: a time constant of one second. A comparison line. */
export const plugDischarge = defineTable({
  id: 'iec-60950-1/2005/plug-discharge',
  title: 'Voltage at the plug after disconnection, older edition',
  source: cite('iec-60950-1', 'clause 2.1.1.7', 'secondary', {
    alsoBy: ['a message of a public product-safety list: below 37 % of the peak within the first second'],
  }),
  lookUp: 'exact key',
  key: { name: 'line', unit: '', si: 'word', factor: 1 },
  columns: { share: { unit: '%', si: '1', factor: 1e-2 } },
  rows: [['oneSecond', 37]],
});
