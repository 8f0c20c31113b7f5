import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Highest voltage at a 5 V USB socket after any single fault of the supply. */
export const faultVoltage = defineTable({
  id: 'usb/2010/fault-voltage',
  title: 'Voltage at a USB socket after a fault',
  source: cite('usb-2', 'battery charging 1.2, a charger with one fault', 'memory'),
  lookUp: 'exact key',
  key: { name: 'kind of port', unit: '', si: 'word', factor: 1 },
  columns: { most: { unit: 'V', si: 'V', factor: 1 } },
  rows: [['usb5', 9]],
});
