import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (table: 'clearance-peak' | 'clearance-withstand', column: string, voltage: number, printed: number): WorkedExample => ({
  table: `iec-62368-1/2018/${table}/${column}`,
  publication: 'IEC 62368-1',
  edition: '2018',
  place: `table ${table === 'clearance-peak' ? 10 : 14}, ${column}, ${voltage} V; read in the data block of an open magnetics library`,
  origin: 'standard',
  inputs: { key: voltage },
  printed,
  unit: 'mm',
  tolerance: 0,
  because: CELL,
});

/** Corners of both tables, and the rows that mains of 120 V and 230 V lead to. */
export const TABLES_10_AND_14: readonly WorkedExample[] = [
  cell('clearance-peak', 'B_PD2', 2000, 1.27),
  cell('clearance-peak', 'R_PD2', 2000, 2.54),
  cell('clearance-peak', 'R_PD1', 330, 0.02),
  cell('clearance-peak', 'R_PD3', 330, 1.5),
  cell('clearance-peak', 'R_PD3', 1500, 1.6),
  cell('clearance-peak', 'R_PD2', 12000, 33),
  cell('clearance-withstand', 'B_PD2', 1500, 0.5),
  cell('clearance-withstand', 'R_PD2', 1500, 1),
  cell('clearance-withstand', 'B_PD2', 4000, 3),
  cell('clearance-withstand', 'R_PD2', 4000, 5.5),
  cell('clearance-withstand', 'R_PD2', 5000, 8),
  cell('clearance-withstand', 'R_PD2', 6000, 8),
  cell('clearance-withstand', 'R_PD3', 12000, 24),
];
