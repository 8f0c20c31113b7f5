import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Test voltage (peak or d.c.) by the temporary overvoltages of the mains. */
export const strengthOvervoltage = defineTable({
  id: 'iec-62368-1/2018/strength-overvoltage',
  title: 'Electric strength for temporary overvoltages of the mains',
  source: cite('iec-62368-1', 'table 27', 'secondary', {
    alsoBy: [
      'an open magnetics library, data block of IEC 62368-1',
      'a published test report: 4000 V d.c. across reinforced insulation at 230 V',
    ],
  }),
  lookUp: 'first row that covers',
  key: { name: 'mains voltage', unit: 'V rms', si: 'V', factor: 1 },
  columns: { basic: { unit: 'V peak', si: 'V', factor: 1 }, reinforced: { unit: 'V peak', si: 'V', factor: 1 } },
  rows: [
    [250, 2000, 4000],
    [600, 2500, 5000],
  ],
});
