import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (category: 'I' | 'II' | 'III' | 'IV', mains: number, printed: number): WorkedExample => ({
  table: `iec-60664-1/2007/rated-impulse-voltage/${category}`,
  publication: 'IEC 60664-1',
  edition: '2007',
  place: `table F.1, category ${category}, row that covers ${mains} V; read in the data block of an open magnetics library`,
  origin: 'standard',
  inputs: { key: mains },
  printed,
  unit: 'V peak',
  tolerance: 0,
  because: CELL,
});

/** Rated impulse voltage: mains to neutral, first row that covers it. */
export const TABLE_F1: readonly WorkedExample[] = [
  cell('II', 230, 2500),
  cell('II', 120, 1500),
  cell('II', 50, 500),
  cell('III', 230, 4000),
  cell('II', 400, 4000),
  cell('IV', 1000, 12000),
  cell('I', 50, 330),
];
