import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * Temperature that plastics, tapes, sleeves and wires bear for long, by what they are: `least` of an ordinary grade, `most` of a good one. What is
 * printed on the thing itself outranks both; between them nobody can tell. `any` is all of them together, for one that nobody could tell.
 */
export const materialTemperature = defineTable({
  id: 'plastics-makers/2026/material-temperature',
  title: 'Temperature that plastics, tapes, sleeves and wires bear',
  source: cite('plastics-makers', 'long-term temperature indices of ordinary grades', 'memory'),
  lookUp: 'exact key',
  key: { name: 'substance', unit: '', si: 'word', factor: 1 },
  columns: {
    least: { unit: '°C', si: 'K', factor: 1 },
    most: { unit: '°C', si: 'K', factor: 1 },
  },
  rows: [
    ['polycarbonate', 80, 130],
    ['polycarbonateAbs', 80, 95],
    ['abs', 60, 80],
    ['polystyrene', 50, 80],
    ['polyamideGlass', 105, 130],
    ['pbtGlass', 130, 140],
    ['petGlass', 140, 155],
    ['phenolic', 150, 150],
    ['polyesterTape', 130, 130],
    ['polyimideTape', 180, 180],
    ['pvcTape', 80, 105],
    ['shrinkSleeve', 105, 125],
    ['glassSleeve', 155, 200],
    ['pvcWire', 75, 105],
    ['any', 50, 200],
  ],
  cellSources: {
    'pvcWire/most': cite('iec-60950-1', 'clause 4.5', 'secondary', {
      alsoBy: ['a published test report of a 30 W adapter, table 4.5: lead wire 105 °C'],
    }),
  },
});
