import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (column: string, working: number, printed: number): WorkedExample => ({
  table: `iec-62368-1/2018/creepage/${column}`,
  publication: 'IEC 60664-1',
  edition: '2007',
  place: `table F.4, ${column}, ${working} V; read in the excerpt of a terminal maker's catalogue of 2015, page 594`,
  origin: 'standard',
  inputs: { key: working },
  printed,
  unit: 'mm',
  tolerance: 0,
  because: CELL,
});

/** Creepage of the older horizontal standard, which table 17 of IEC 62368-1 repeats. */
export const TABLE_F4: readonly WorkedExample[] = [
  cell('PD2_III', 250, 2.5),
  cell('PD2_I', 250, 1.25),
  cell('PD3_III', 250, 4),
  cell('PD2_II', 125, 1.05),
  cell('PD2_III', 125, 1.5),
  cell('PD3_I', 10, 1),
  cell('PD3_III', 1000, 16),
  cell('PD1', 1000, 3.2),
];
