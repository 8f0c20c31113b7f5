import { CELL, type WorkedExample } from '../worked-example.ts';

const EXTRACT = {
  publication: 'National technical regulation that adopts IEC 62368-1, text extract',
  origin: 'standard',
  unit: 'V',
  tolerance: 0,
  because: CELL,
} as const;
const ES1 = 'iec-62368-1/2018/charged-capacitor/es1';
const ES2 = 'iec-62368-1/2018/charged-capacitor/es2';
const at = (nanofarads: number, es1: number, es2: number): WorkedExample[] => [
  { ...EXTRACT, place: `table 5, ${nanofarads} nF, ES1`, table: ES1, inputs: { key: nanofarads / 1e9 }, printed: es1 },
  { ...EXTRACT, place: `table 5, ${nanofarads} nF, ES2`, table: ES2, inputs: { key: nanofarads / 1e9 }, printed: es2 },
];

/** Charged capacitors, row by row, and a straight line between two rows. */
export const CHARGED_CAPACITORS: readonly WorkedExample[] = [
  ...at(300, 60, 120),
  ...at(170, 75, 150),
  ...at(91, 100, 200),
  ...at(61, 125, 250),
  ...at(41, 150, 300),
  ...at(28, 200, 400),
  ...at(18, 250, 500),
  ...at(12, 350, 700),
  ...at(8, 500, 1000),
  ...at(4, 1000, 2000),
  ...at(1.6, 2500, 5000),
  ...at(0.8, 5000, 10_000),
  ...at(0.4, 10_000, 20_000),
  ...at(0.2, 20_000, 40_000),
  ...at(0.133, 25_000, 50_000),
  {
    publication: 'Schoolbook',
    origin: 'closed-form',
    place: 'half way from 91 nF to 170 nF',
    table: ES1,
    inputs: { key: 130.5e-9 },
    printed: 87.5,
    unit: 'V',
    tolerance: 1e-9,
    because: 'a straight line',
  },
];
