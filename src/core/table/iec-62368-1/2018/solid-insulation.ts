import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Least thickness of one solid piece of insulation. Basic and functional insulation have none. */
export const solidInsulation = defineTable({
  id: 'iec-62368-1/2018/solid-insulation',
  title: 'Distance through insulation',
  source: cite('iec-62368-1', 'clause 5.4.4.2', 'secondary', {
    alsoBy: ['two published test reports, 0.4 mm', 'an open magnetics library, insulation logic', 'a safety engineers’ list'],
  }),
  lookUp: 'exact key',
  key: { name: 'insulation', unit: '', si: 'word', factor: 1 },
  columns: { least: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [['reinforced', 0.4]],
});
