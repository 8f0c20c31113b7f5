import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Test voltage (peak or d.c.) by the peak of the working voltage: 1.3 times it for basic and 1.6 times for reinforced insulation. */
export const strengthPeak = defineTable({
  id: 'iec-62368-1/2018/strength-peak',
  title: 'Electric strength for the peak of the working voltage',
  source: cite('iec-62368-1', 'table 26', 'secondary', { alsoBy: ['an open magnetics library, data block of IEC 62368-1: all 18 cells'] }),
  lookUp: 'linear between rows',
  key: { name: 'peak working voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: { basic: { unit: 'V peak', si: 'V', factor: 1 }, reinforced: { unit: 'V peak', si: 'V', factor: 1 } },
  rows: [
    [330, 430, 530],
    [500, 650, 800],
    [800, 1040, 1280],
    [1500, 1950, 2400],
    [2500, 3250, 4000],
    [4000, 5200, 6400],
    [6000, 7800, 9600],
    [8000, 10400, 12800],
    [12000, 15600, 19200],
  ],
});
