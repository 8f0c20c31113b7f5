import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Least distance on a printed board whose coating has stood the tests of the annex, by peak working voltage. Never for plain solder mask. */
export const coatedBoard = defineTable({
  id: 'iec-62368-1/2018/coated-board',
  title: 'Distances on coated boards',
  source: cite('iec-62368-1', 'table G.13', 'secondary', { alsoBy: ['an open magnetics library, data block of IEC 62368-1'] }),
  lookUp: 'first row that covers',
  key: { name: 'peak working voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: { basic: { unit: 'mm', si: 'm', factor: 1e-3 }, reinforced: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [
    [227, 0.25, 0.5],
    [283, 0.4, 0.8],
    [354, 0.56, 1.12],
    [455, 0.75, 1.5],
    [570, 1, 2],
    [710, 1.3, 2.6],
  ],
});
