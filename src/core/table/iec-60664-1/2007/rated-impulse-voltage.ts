import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Impulse that equipment must stand, by mains voltage (line to neutral) and overvoltage category I to IV. The rows of 1250 and 1500 V are d.c. */
export const ratedImpulseVoltage = defineTable({
  id: 'iec-60664-1/2007/rated-impulse-voltage',
  title: 'Rated impulse voltage',
  source: cite('iec-60664-1', 'table F.1', 'secondary', {
    alsoBy: [
      'an open magnetics library, insulation data block',
      'a converter maker, table of transients by category (150 to 1000 V)',
      'a data sheet example (1000 V, category II: 6000 V)',
    ],
    disagrees: ['one maker prints 1200 V for 1000 V, category IV: a misprint of 12000 V'],
  }),
  lookUp: 'first row that covers',
  key: { name: 'mains, line to neutral', unit: 'V', si: 'V', factor: 1 },
  columns: {
    I: { unit: 'V peak', si: 'V', factor: 1 },
    II: { unit: 'V peak', si: 'V', factor: 1 },
    III: { unit: 'V peak', si: 'V', factor: 1 },
    IV: { unit: 'V peak', si: 'V', factor: 1 },
  },
  rows: [
    [50, 330, 500, 800, 1500],
    [100, 500, 800, 1500, 2500],
    [150, 800, 1500, 2500, 4000],
    [300, 1500, 2500, 4000, 6000],
    [600, 2500, 4000, 6000, 8000],
    [1000, 4000, 6000, 8000, 12000],
    [1250, 4000, 6000, 8000, 12000],
    [1500, 6000, 8000, 10000, 15000],
  ],
});
