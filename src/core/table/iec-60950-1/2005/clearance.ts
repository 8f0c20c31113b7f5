import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Clearance on the mains by the older standard, shown beside the deciding limit. By nominal mains voltage, to 420 V (210 V) peak working voltage. */
export const clearance = defineTable({
  id: 'iec-60950-1/2005/clearance',
  title: 'Clearance, mains circuits, pollution degree 2',
  source: cite('iec-60950-1', 'table 2H', 'secondary', { alsoBy: ['a distributor’s tutorial: 2.0 and 4.0 mm at 264 V a.c.'] }),
  lookUp: 'first row that covers',
  key: { name: 'mains', unit: 'V rms', si: 'V', factor: 1 },
  columns: { basic: { unit: 'mm', si: 'm', factor: 1e-3 }, reinforced: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [
    [150, 1, 2],
    [300, 2, 4],
  ],
  cellSources: {
    '150/basic': cite('iec-60950-1', 'table 2H', 'memory'),
    '150/reinforced': cite('iec-60950-1', 'table 2H', 'memory'),
  },
});
