import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Kelvin for each watt from the junction of a rectifier to its leads (or its case, DO-15 and TO-220), by package; 2 to 5 A parts. */
export const rectifierPackage = defineTable({
  id: 'diode-makers/2026/rectifier-package',
  title: 'Thermal resistance from junction to lead or case, by package',
  source: cite('diode-makers', 'data sheets of Schottky rectifiers', 'secondary'),
  lookUp: 'exact key',
  key: { name: 'package', unit: '', si: 'word', factor: 1 },
  columns: { toLead: { unit: 'K/W', si: '1', factor: 1 } },
  rows: [
    ['SMA', 28],
    ['SMC', 17],
    ['DO-15', 30],
    ['DO-201AD', 10],
    ['TO-220', 2],
  ],
  cellSources: {
    'SMA/toLead': cite('diode-makers', 'one maker’s sheet of 3 A parts: 28 K/W', 'secondary'),
    'SMC/toLead': cite('diode-makers', 'usual figure of 3 A parts', 'memory'),
    'DO-15/toLead': cite('diode-makers', 'one maker’s sheet of a 3 A part: 30 K/W to the case', 'secondary'),
    'DO-201AD/toLead': cite('diode-makers', 'one maker’s sheet of 3 A parts: 10 K/W', 'secondary'),
    'TO-220/toLead': cite('diode-makers', 'usual figure of 10 A parts, to the case', 'memory'),
  },
});
