import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Clearance above 30 kHz by the peak of the working voltage, pollution degree 2; other degrees by their factor. */
export const clearanceHighFrequency = defineTable({
  id: 'iec-62368-1/2018/clearance-high-frequency',
  title: 'Clearance for working voltages above 30 kHz',
  source: cite('iec-62368-1', 'table 11', 'secondary', {
    alsoBy: ['a translated text of table 11', 'an open magnetics library, data block of IEC 62368-1: all 16 cells agree'],
  }),
  lookUp: 'linear between rows',
  key: { name: 'peak working voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: { basic: { unit: 'mm', si: 'm', factor: 1e-3 }, reinforced: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [
    [600, 0.07, 0.14],
    [800, 0.22, 0.44],
    [1000, 0.6, 1.2],
    [1200, 1.68, 3.36],
    [1400, 2.82, 5.64],
    [1600, 4.8, 9.6],
    [1800, 8.04, 16.08],
    [2000, 13.2, 26.4],
  ],
});
