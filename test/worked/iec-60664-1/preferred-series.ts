import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (rated: number, printed: number): WorkedExample => ({
  table: 'iec-60664-1/2007/next-impulse/next',
  publication: 'IEC 60664-1',
  edition: '2007',
  place: `table F.1, the value that follows ${rated} V in the series; read in the logic of an open magnetics library`,
  origin: 'standard',
  inputs: { key: rated },
  printed,
  unit: 'V peak',
  tolerance: 0,
  because: CELL,
});

/** Reinforced insulation is dimensioned for the next preferred impulse voltage. */
export const PREFERRED_SERIES: readonly WorkedExample[] = [cell(1500, 2500), cell(2500, 4000), cell(4000, 6000), cell(8000, 12000)];
