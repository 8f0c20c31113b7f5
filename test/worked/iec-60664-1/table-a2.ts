import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (altitude: number, printed: number): WorkedExample => ({
  table: 'iec-62368-1/2018/altitude/factor',
  publication: 'IEC 60664-1',
  edition: '2007',
  place: `table A.2, ${altitude} m; read in the data block of an open magnetics library, which prints the same for table 16 of IEC 62368-1`,
  origin: 'standard',
  inputs: { key: altitude },
  printed,
  unit: '1',
  tolerance: 0,
  because: CELL,
});

/** Factor on clearances by altitude. */
export const TABLE_A2: readonly WorkedExample[] = [
  cell(2000, 1),
  cell(3000, 1.14),
  cell(4000, 1.29),
  cell(5000, 1.48),
  {
    table: 'iec-62368-1/2018/altitude/factor',
    publication: 'IEC 60664-1',
    edition: '2007',
    place: 'table A.2, half way between 2000 m and 3000 m',
    origin: 'closed-form',
    inputs: { key: 2500 },
    printed: 1.07,
    unit: '1',
    tolerance: 0,
    because: 'the mean of 1 and 1.14',
  },
  {
    formula: 'insulation/required-clearance',
    publication: 'IEC 60664-1',
    edition: '2007',
    place: 'table A.2, 5000 m, on 3.0 mm',
    origin: 'closed-form',
    inputs: { byPeak: 2.54e-3, byTransient: 3e-3, altitude: 1.48 },
    printed: 4.44,
    unit: 'mm',
    tolerance: 0,
    because: 'the product of two printed figures',
  },
];
