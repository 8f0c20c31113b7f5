import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Plastic that is touched by the user, older edition: 70 K above 25 °C. A comparison line. */
export const touchTemperature = defineTable({
  id: 'iec-60950-1/2005/touch-temperature',
  title: 'Touch temperature of plastic, older edition',
  source: cite('iec-60950-1', 'table 4C', 'secondary', {
    alsoBy: ['two published test reports: 70 K of rise, 95 °C', 'a safety engineers’ list: 95 °C'],
  }),
  lookUp: 'exact key',
  key: { name: 'material', unit: '', si: 'word', factor: 1 },
  columns: { most: { unit: '°C', si: 'K', factor: 1 } },
  rows: [['plastic', 95]],
});
