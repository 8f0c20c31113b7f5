import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Highest winding temperature in normal use: read with a thermocouple on the winding, and 10 K higher by its resistance. */
const fromMemory = cite('iec-62368-1', 'annex B.2.6 and G.5.3, class limits', 'memory');

export const windingTemperature = defineTable({
  id: 'iec-62368-1/2018/winding-temperature',
  title: 'Winding temperature by class of insulation',
  source: fromMemory,
  lookUp: 'exact key',
  key: { name: 'class', unit: '', si: 'word', factor: 1 },
  columns: { thermocouple: { unit: '°C', si: 'K', factor: 1 }, resistance: { unit: '°C', si: 'K', factor: 1 } },
  rows: [
    ['A', 90, 100],
    ['E', 105, 115],
    ['B', 110, 120],
    ['F', 130, 140],
    ['H', 155, 165],
  ],
  cellSources: {
    'A/thermocouple': cite('iec-60950-1', 'clause 4.5, class 105: 75 K rise at 25 °C, less 10 K for thermocouples', 'secondary', {
      alsoBy: ['two published test reports', 'a UL table of class 105: 90 °C'],
    }),
    'A/resistance': cite('iec-60950-1', 'clause 4.5, class 105: 75 K rise at 25 °C', 'secondary', {
      alsoBy: ['a published test report', 'a UL table of class 105: 100 °C'],
    }),
    'B/resistance': cite('iec-60950-1', 'clause 4.5, class 130: 95 K rise at 25 °C', 'secondary', {
      alsoBy: [
        'a published test report',
        'a UL table of class 130: 120 °C',
        'a safety engineers’ list: 120 °C for an embedded measurement',
      ],
    }),
    'B/thermocouple': cite('iec-60950-1', 'clause 4.5, class 130: 95 K rise at 25 °C, less 10 K for thermocouples', 'secondary', {
      alsoBy: ['two published test reports: 110 °C', 'a UL table of class 130: 110 °C'],
    }),
  },
});
