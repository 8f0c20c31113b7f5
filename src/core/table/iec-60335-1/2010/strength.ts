import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Test voltage of household appliances, cold, by rated voltage. Volts rms: times the square root of two for a peak. A comparison line. */
export const strength = defineTable({
  id: 'iec-60335-1/2010/strength',
  title: 'Electric strength of household appliances',
  source: cite('iec-60335-1', 'table 7', 'secondary', { alsoBy: ['an open magnetics library, data block of IEC 60335-1'] }),
  lookUp: 'first row that covers',
  key: { name: 'rated voltage', unit: 'V rms', si: 'V', factor: 1 },
  columns: {
    basic: { unit: 'V rms', si: 'V', factor: 1 },
    supplementary: { unit: 'V rms', si: 'V', factor: 1 },
    reinforced: { unit: 'V rms', si: 'V', factor: 1 },
  },
  rows: [
    [150, 1250, 1250, 2500],
    [250, 1250, 1750, 3000],
  ],
});
