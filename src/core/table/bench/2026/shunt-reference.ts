import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * 431-type shunt references by the letter of their grade. An open cell is not known. A grade whose letter cannot be read is taken as the
 * widest.
 */
export const shuntReference = defineTable({
  id: 'bench/2026/shunt-reference',
  title: 'Shunt references',
  source: cite('reference-sheets', 'electrical characteristics at 25 °C', 'memory'),
  lookUp: 'exact key',
  key: { name: 'type and grade', unit: '', si: 'word', factor: 1 },
  columns: {
    voltage: { unit: 'V', si: 'V', factor: 1 },
    halfWidth: { unit: '%', si: '1', factor: 0.01 },
    pinCurrent: { unit: 'µA', si: 'A', factor: 1e-6 },
    pinCurrentMost: { unit: 'µA', si: 'A', factor: 1e-6 },
    cathodeLeast: { unit: 'V', si: 'V', factor: 1 },
    bias: { unit: 'mA', si: 'A', factor: 1e-3 },
  },
  rows: [
    ['431', 2.495, 2, 2, 4, 2.5, 1],
    ['431A', 2.495, 1, 2, 4, 2.5, 1],
    ['431B', 2.495, 0.5, 2, 4, 2.5, 1],
    ['V431', 1.24, null, null, null, null, null],
  ],
});
