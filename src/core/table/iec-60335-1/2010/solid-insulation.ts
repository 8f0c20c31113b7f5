import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Least thickness of insulation in one solid piece, household appliances; `tested` where it has stood further tests. A comparison. */
export const solidInsulation = defineTable({
  id: 'iec-60335-1/2010/solid-insulation',
  title: 'Distance through insulation, household appliances',
  source: cite('iec-60335-1', 'clause 29.3 and table 19 (overvoltage category II, 300 V)', 'secondary', {
    alsoBy: ['an open magnetics library, insulation logic and data block', 'a decision of the certifiers’ committee, as copied on a forum'],
  }),
  lookUp: 'exact key',
  key: { name: 'insulation', unit: '', si: 'word', factor: 1 },
  columns: { least: { unit: 'mm', si: 'm', factor: 1e-3 }, tested: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [
    ['supplementary', 1, null],
    ['reinforced', 2, 0.6],
  ],
});
