import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** The step of the preferred impulse series above a rated one: reinforced insulation is dimensioned for it. */
export const nextImpulse = defineTable({
  id: 'iec-60664-1/2007/next-impulse',
  title: 'Next preferred impulse voltage',
  source: cite('iec-60664-1', 'clause 5.1.6, preferred series', 'secondary', {
    alsoBy: [
      'an open magnetics library: reinforced takes the next row of table F.1',
      'a data sheet example: 6000 V rated, reinforced by the 8000 V row',
    ],
  }),
  lookUp: 'exact key',
  key: { name: 'rated impulse voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: { next: { unit: 'V peak', si: 'V', factor: 1 } },
  rows: [
    [330, 500],
    [500, 800],
    [800, 1500],
    [1500, 2500],
    [2500, 4000],
    [4000, 6000],
    [6000, 8000],
    [8000, 12000],
  ],
});
