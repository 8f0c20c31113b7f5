import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Common-mode voltage of a common supply for telephones, peak to peak, of pulses that last at least as long as `pulse`. */
export const earthSwing = defineTable({
  id: 'iec-62684/2018/earth-swing',
  title: 'Common-mode voltage of a common supply for telephones',
  source: cite('iec-62684', 'common-mode noise at the output', 'secondary', {
    alsoBy: ['a chip maker’s page on standards: 2 V peak to peak for pulses longer than 250 ns'],
  }),
  lookUp: 'exact key',
  key: { name: 'supply', unit: '', si: 'word', factor: 1 },
  columns: { most: { unit: 'V', si: 'V', factor: 1 }, pulse: { unit: 'µs', si: 's', factor: 1e-6 } },
  rows: [['phoneSupply', 2, 0.25]],
});
