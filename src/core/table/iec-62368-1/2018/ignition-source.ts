import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * What makes a place a potential ignition source. `arcing`: a joint or contact that may part, above this open-circuit peak voltage, where
 * the peak voltage times the rms current is above this product. `resistive`: what may turn into heat after a fault, in the first half minute
 * where electronics limit it and from then on.
 */
export const ignitionSource = defineTable({
  id: 'iec-62368-1/2018/ignition-source',
  title: 'Potential ignition sources',
  source: cite('iec-62368-1', 'clause 6.2.3', 'secondary', { alsoBy: ['notes in two published test-report forms'] }),
  lookUp: 'exact key',
  key: { name: 'kind', unit: '', si: 'word', factor: 1 },
  columns: {
    peakVoltage: { unit: 'V peak', si: 'V', factor: 1 },
    power: { unit: 'W', si: 'W', factor: 1 },
    powerAtOnce: { unit: 'W', si: 'W', factor: 1 },
  },
  rows: [
    ['arcing', 50, 15, null],
    ['resistive', null, 15, 100],
  ],
});
