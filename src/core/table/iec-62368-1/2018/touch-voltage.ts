import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Direct voltage that may be touched (es1), and that may be touched after one fault (es2). */
export const touchVoltage = defineTable({
  id: 'iec-62368-1/2018/touch-voltage',
  title: 'Electrical energy sources, direct voltage',
  source: cite('iec-62368-1', 'table 4', 'secondary', {
    alsoBy: ['a national technical regulation that adopts the standard, text extract'],
  }),
  lookUp: 'exact key',
  key: { name: 'level', unit: '', si: 'word', factor: 1 },
  columns: { direct: { unit: 'V', si: 'V', factor: 1 } },
  rows: [
    ['es1', 60],
    ['es2', 120],
  ],
});
