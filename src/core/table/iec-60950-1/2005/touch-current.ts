import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Comparison lines for touch current: shown beside the deciding limit, without failure. */
export const touchCurrent = defineTable({
  id: 'iec-60950-1/2005/touch-current',
  title: 'Touch current of a class II unit and of mobile-phone supplies',
  source: cite('iec-60950-1', 'table 5A, class II', 'secondary', { alsoBy: ['a published test report: 264 V 60 Hz, 0.25 mA'] }),
  lookUp: 'exact key',
  key: { name: 'line', unit: '', si: 'word', factor: 1 },
  columns: { rms: { unit: 'mA', si: 'A', factor: 1e-3 } },
  rows: [
    ['class2', 0.25],
    ['phoneSupply', 0.09],
  ],
  cellSources: {
    'phoneSupply/rms': cite('iec-62684', 'touch current of a common supply', 'secondary', {
      alsoBy: ['an extract prints 90 pA, a misreading of 90 µA'],
    }),
  },
});
