import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (peak: number, printed: number): WorkedExample => ({
  table: 'iec-62368-1/2018/clearance-peak/B_PD1',
  publication: 'IEC 60664-1',
  edition: '2020',
  place: `table F.8, case A, ${peak} V peak; read in the data block of an open magnetics library`,
  origin: 'standard',
  inputs: { key: peak },
  printed,
  unit: 'mm',
  tolerance: 0,
  because: CELL,
});

/** Clearance for steady peaks: the basic column for pollution degree 1 of table 10 repeats it. */
export const TABLE_F8: readonly WorkedExample[] = [cell(500, 0.04), cell(800, 0.13), cell(2000, 1.27), cell(12000, 19)];
