import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

const REPORTS = 'two published test reports print the totals of reinforced insulation: 4.2 mm at 428 V peak and 4.4 mm at 530 V peak';

/** What the older standard adds to a clearance of mains circuits of 150 to 300 V when the peak working voltage is above 420 V. */
export const additionalClearance = defineTable({
  id: 'iec-60950-1/2005/additional-clearance',
  title: 'Additional clearance by peak working voltage, mains 150 to 300 V, pollution degree 1 and 2',
  source: cite('iec-60950-1', 'table 2L', 'memory'),
  lookUp: 'first row that covers',
  key: { name: 'peak working voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: { reinforced: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [
    [420, 0],
    [493, 0.2],
    [567, 0.4],
    [640, 0.6],
    [713, 0.8],
    [787, 1],
    [860, 1.2],
    [933, 1.4],
    [1006, 1.6],
    [1080, 1.8],
  ],
  cellSources: {
    '493/reinforced': cite('iec-60950-1', 'table 2L', 'secondary', { alsoBy: [REPORTS] }),
    '567/reinforced': cite('iec-60950-1', 'table 2L', 'secondary', { alsoBy: [REPORTS] }),
  },
});
