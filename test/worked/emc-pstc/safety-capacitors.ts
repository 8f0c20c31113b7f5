import { CELL, type WorkedExample } from '../worked-example.ts';

const MAKER = {
  publication: 'Fuhua Electronic, classification of X and Y capacitors',
  origin: 'publication',
  tolerance: 0,
  because: CELL,
  unit: 'V peak',
} as const;
const CALCULATOR = { ...MAKER, publication: 'TechOverflow, impulse withstand by IEC 60384-14' } as const;

const stood = (key: string, printed: number, from: typeof MAKER | typeof CALCULATOR = MAKER): WorkedExample => ({
  ...from,
  table: 'iec-60384-14/2013/impulse/volts',
  place: `impulse of class ${key}`,
  inputs: { key },
  printed,
});

/** Impulses by class, and how they fall with the capacitance: X2 of 1 µF and 4 µF. */
export const SAFETY_CAPACITORS: readonly WorkedExample[] = [
  stood('X1', 4000),
  stood('X2', 2500),
  stood('Y1', 8000),
  stood('Y2', 5000),
  stood('Y4', 2500, CALCULATOR),
  { ...MAKER, formula: 'board/impulse-of-class', place: 'X2 of 1 µF', inputs: { impulse: 2500, capacitance: 1e-6 }, printed: 2500 },
  {
    ...MAKER,
    formula: 'board/impulse-of-class',
    place: 'X2: 2.5 kV over the root of the microfarads, 4 µF',
    inputs: { impulse: 2500, capacitance: 4e-6 },
    printed: 1250,
    tolerance: 1e-9,
    because: 'a root in double precision',
  },
  {
    ...CALCULATOR,
    formula: 'board/impulse-of-class',
    place: 'Y2: 5 kV over the root of the microfarads, 4 µF',
    inputs: { impulse: 5000, capacitance: 4e-6 },
    printed: 2500,
    tolerance: 1e-9,
    because: 'a root in double precision',
  },
  { ...MAKER, formula: 'board/impulse-of-class', place: 'X2 of 100 nF', inputs: { impulse: 2500, capacitance: 1e-7 }, printed: 2500 },
];
