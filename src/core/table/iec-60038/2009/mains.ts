import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Mains by market: what insulation is judged at, and the ends of the range a unit meets. A label of 100-240 V is judged at 264 V 60 Hz and 90 V. */
export const mains = defineTable({
  id: 'iec-60038/2009/mains',
  title: 'Mains voltages and frequencies',
  source: cite('iec-60038', 'table 1, nominal voltages; ends of the range by ±10 %', 'memory'),
  lookUp: 'exact key',
  key: { name: 'market', unit: '', si: 'word', factor: 1 },
  columns: {
    nominal: { unit: 'V', si: 'V', factor: 1 },
    frequency: { unit: 'Hz', si: 'Hz', factor: 1 },
    low: { unit: 'V', si: 'V', factor: 1 },
    high: { unit: 'V', si: 'V', factor: 1 },
    highFrequency: { unit: 'Hz', si: 'Hz', factor: 1 },
  },
  rows: [
    ['EU', 230, 50, 207, 253, 50],
    ['UK', 230, 50, 207, 253, 50],
    ['US', 120, 60, 108, 132, 60],
    ['JP', 100, 60, 90, 110, 60],
    ['universal', 230, 50, 90, 264, 60],
  ],
});
