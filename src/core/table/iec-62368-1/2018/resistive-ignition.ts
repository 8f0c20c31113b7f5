import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Power into one part, half a minute after a fault, from which it can set something alight. */
export const resistiveIgnition = defineTable({
  id: 'iec-62368-1/2018/resistive-ignition',
  title: 'Source that can ignite by its heat',
  source: cite('iec-62368-1', 'clause 6, power source above 15 W measured 30 s after the fault', 'memory'),
  lookUp: 'exact key',
  key: { name: 'when', unit: '', si: 'word', factor: 1 },
  columns: { most: { unit: 'W', si: 'W', factor: 1 } },
  rows: [['settled', 15]],
});
