import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Pins one second after unplugging at the voltage peak, by two older or neighbouring standards: comparison lines, above 0.1 µF only. */
export const plugDischarge = defineTable({
  id: 'iec-60335-1/2010/plug-discharge',
  title: 'Voltage at the plug after disconnection, household appliances',
  source: cite('iec-60335-1', 'clause 22.5', 'secondary', { alsoBy: ['forum and translation copies of the clause'] }),
  lookUp: 'exact key',
  key: { name: 'line', unit: '', si: 'word', factor: 1 },
  columns: {
    peak: { unit: 'V', si: 'V', factor: 1 },
    exempt: { unit: 'µF', si: 'F', factor: 1e-6 },
  },
  rows: [['oneSecond', 34, 0.1]],
});
