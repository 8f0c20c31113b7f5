import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Impedance of the body from hand to hand or hand to foot, dry, large contact: for 5, 50 and 95 of a hundred people at most this. */
export const bodyImpedance = defineTable({
  id: 'iec-60479-1/1994/body-impedance',
  title: 'Impedance of the body',
  source: cite('iec-60479-1', 'table of total impedances, in a copy on a page of notes', 'secondary'),
  lookUp: 'linear between rows',
  key: { name: 'touch voltage', unit: 'V', si: 'V', factor: 1 },
  columns: {
    few: { unit: 'Ω', si: 'Ω', factor: 1 },
    half: { unit: 'Ω', si: 'Ω', factor: 1 },
    most: { unit: 'Ω', si: 'Ω', factor: 1 },
  },
  rows: [
    [25, 1750, 3250, 6100],
    [50, 1450, 2625, 4375],
    [75, 1250, 2200, 3500],
    [100, 1200, 1875, 3200],
    [125, 1125, 1625, 2875],
    [220, 1000, 1350, 2125],
    [700, 750, 1100, 1550],
    [1000, 700, 1050, 1500],
  ],
});
