import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (degree: 'PD1' | 'PD2' | 'PD3', impulse: number, printed: number): WorkedExample => ({
  table: `iec-60664-1/2007/clearance-impulse/${degree}`,
  publication: 'IEC 60664-1',
  edition: '2007',
  place: `table F.2, case A, ${degree}, ${impulse} V; read in the data block of an open magnetics library`,
  origin: 'standard',
  inputs: { key: impulse },
  printed,
  unit: 'mm',
  tolerance: 0,
  because: CELL,
});

/** Clearance to stand an impulse, inhomogeneous field. */
export const TABLE_F2: readonly WorkedExample[] = [
  cell('PD2', 2500, 1.5),
  cell('PD2', 4000, 3),
  cell('PD2', 6000, 5.5),
  cell('PD1', 800, 0.1),
  cell('PD2', 800, 0.2),
  cell('PD3', 800, 0.8),
  cell('PD3', 1500, 0.8),
  cell('PD2', 8000, 8),
];
