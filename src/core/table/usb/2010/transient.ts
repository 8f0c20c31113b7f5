import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** How far the voltage at a 5 V socket may go for a moment while the load changes. */
export const transient = defineTable({
  id: 'usb/2010/transient',
  title: 'Overshoot and undershoot at a 5 V socket',
  source: cite('usb-2', 'Battery Charging 1.2, overshoot and undershoot of a charging port', 'memory'),
  lookUp: 'exact key',
  key: { name: 'kind of port', unit: '', si: 'word', factor: 1 },
  columns: { most: { unit: 'V', si: 'V', factor: 1 }, least: { unit: 'V', si: 'V', factor: 1 } },
  rows: [['usb5', 6.0, 4.1]],
});
