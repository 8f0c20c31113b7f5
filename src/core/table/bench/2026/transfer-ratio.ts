import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Current transfer ratio of optocouplers of the 817 kind at 5 mA, by the letter of their grade; without a letter the whole family. */
export const transferRatio = defineTable({
  id: 'bench/2026/transfer-ratio',
  title: 'Transfer ratio of optocouplers',
  source: cite('bench', 'data sheets of the 817 kind, several makers', 'memory'),
  lookUp: 'exact key',
  key: { name: 'type and grade', unit: '', si: 'word', factor: 1 },
  columns: { least: { unit: '%', si: '1', factor: 0.01 }, most: { unit: '%', si: '1', factor: 0.01 } },
  rows: [
    ['817', 50, 600],
    ['817A', 80, 160],
    ['817B', 130, 260],
    ['817C', 200, 400],
    ['817D', 300, 600],
  ],
});
