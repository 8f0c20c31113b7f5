import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (column: 'single' | 'multiple', key: number, printed: number): WorkedExample => ({
  table: `eu-2019-1782/2019/no-load/${column}`,
  publication: 'Commission Regulation (EU) 2019/1782',
  edition: '2019',
  place: `annex II, 1(a), ${column}, ${key} W; read in the data file of legislation.gov.uk`,
  origin: 'standard',
  inputs: { key },
  printed,
  unit: 'W',
  tolerance: 0,
  because: CELL,
});

/** Every figure of no-load power, and two nameplates between them. */
export const NO_LOAD: readonly WorkedExample[] = [
  cell('single', 49, 0.1),
  cell('single', 250, 0.21),
  cell('multiple', 49, 0.3),
  cell('multiple', 250, 0.3),
  cell('single', 10, 0.1),
  cell('single', 65, 0.21),
];
