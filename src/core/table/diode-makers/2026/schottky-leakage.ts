import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Greatest leakage of Schottky rectifiers at their rated voltage, the junction temperature it is given at, and kelvin to ambient for each watt, by type. */
const GENERAL = cite(
  'diode-makers',
  'one maker’s sheet DS23003 of 3 A parts: 20 mA at 100 °C, 10 K/W to the lead and 40 to ambient',
  'secondary',
);
const SMALL = cite('diode-makers', 'one maker’s sheet of 3 A parts in SMA: 10 mA at 125 °C, 88 K/W to ambient', 'secondary');

export const schottkyLeakage = defineTable({
  id: 'diode-makers/2026/schottky-leakage',
  title: 'Greatest leakage of Schottky rectifiers, by type',
  source: cite('diode-makers', 'data sheets of Schottky rectifiers', 'secondary'),
  lookUp: 'exact key',
  key: { name: 'type', unit: '', si: 'word', factor: 1 },
  columns: {
    leakage: { unit: 'mA', si: 'A', factor: 0.001 },
    at: { unit: '°C', si: 'K', factor: 1 },
    toAmbient: { unit: 'K/W', si: '1', factor: 1 },
  },
  rows: [
    ['1N5820', 20, 100, 40],
    ['1N5821', 20, 100, 40],
    ['1N5822', 20, 100, 40],
    ['SK32A', 10, 125, 88],
    ['SK33A', 10, 125, 88],
    ['SK34A', 10, 125, 88],
  ],
  cellSources: {
    ...Object.fromEntries(
      ['1N5820', '1N5821', '1N5822'].flatMap((type) => ['leakage', 'at', 'toAmbient'].map((cell) => [`${type}/${cell}`, GENERAL])),
    ),
    ...Object.fromEntries(
      ['SK32A', 'SK33A', 'SK34A'].flatMap((type) => ['leakage', 'at', 'toAmbient'].map((cell) => [`${type}/${cell}`, SMALL])),
    ),
  },
});
