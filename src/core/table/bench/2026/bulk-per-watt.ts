import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Microfarads that makers put in for each watt of output. A habit that keeps the valley high enough, not a limit. */
export const bulkPerWatt = defineTable({
  id: 'bench/2026/bulk-per-watt',
  title: 'Bulk capacitance for each watt of output',
  source: cite('bench', 'microfarads for each watt of output, by the lowest mains', 'common-practice', {
    alsoBy: [
      'one maker’s application note: 2 to 3 at 100 to 115 V and over the whole range, 1 at 230 V',
      'another maker’s design note: 2 from 85 V, 1 from 180 V',
    ],
  }),
  lookUp: 'exact key',
  key: { name: 'mains', unit: '', si: 'word', factor: 1 },
  columns: { least: { unit: '1', si: '1', factor: 1 }, most: { unit: '1', si: '1', factor: 1 } },
  rows: [
    ['fromAmerican', 2, 3],
    ['europeanOnly', 1, 1],
  ],
});
