import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * Temperature that a kind of part bears when its own rating was not read: `least` is the lowest rating that ordinary parts of the kind have,
 * `most` the highest. Between them nobody can tell. A rating on the part outranks both.
 */
export const componentTemperature = defineTable({
  id: 'iec-60950-1/2005/component-temperature',
  title: 'Temperature that parts bear, by kind',
  source: cite('iec-60950-1', 'clause 4.5 and table 4B, part ratings', 'memory'),
  lookUp: 'exact key',
  key: { name: 'kind', unit: '', si: 'word', factor: 1 },
  columns: {
    least: { unit: '°C', si: 'K', factor: 1 },
    most: { unit: '°C', si: 'K', factor: 1 },
  },
  rows: [
    ['boardFr4', 130, 130],
    ['boardPaper', 105, 105],
    ['board', 105, 130],
    ['electrolyticCapacitor', 85, 105],
    ['yCapacitor', 85, 125],
    ['optocoupler', 100, 110],
    ['junction', 150, 175],
  ],
  cellSources: {
    'boardFr4/least': cite('iec-60950-1', 'clause 4.5', 'secondary', {
      alsoBy: ['a published test report of a 30 W adapter, table 4.5: printed board 130 °C'],
    }),
    'boardFr4/most': cite('iec-60950-1', 'clause 4.5', 'secondary', {
      alsoBy: ['a published test report of a 30 W adapter, table 4.5: printed board 130 °C'],
    }),
    'board/most': cite('iec-60950-1', 'clause 4.5', 'secondary', {
      alsoBy: ['a published test report of a 30 W adapter, table 4.5: printed board 130 °C'],
    }),
    'electrolyticCapacitor/most': cite('iec-60950-1', 'clause 4.5', 'secondary', {
      alsoBy: ['a published test report of a 30 W adapter, table 4.5: electrolytic capacitor 105 °C'],
    }),
    'yCapacitor/most': cite('iec-60950-1', 'clause 4.5', 'secondary', {
      alsoBy: ['a published test report of a 30 W adapter, table 4.5: Y capacitor 125 °C'],
    }),
  },
});
