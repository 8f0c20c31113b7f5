import { CELL, type WorkedExample } from '../worked-example.ts';

const cell = (degree: 'PD2' | 'PD3', impulse: number, printed: number): WorkedExample => ({
  table: `iec-60664-1/2007/clearance-impulse/${degree}`,
  publication: 'Bane NOR, technical rules',
  place: `table of minimum air distances by impulse withstand voltage, ${impulse / 1000} kV, ${degree}`,
  origin: 'publication',
  inputs: { key: impulse },
  printed,
  unit: 'mm',
  tolerance: 0,
  because: CELL,
});

/** A railway's own copy of table F.2. */
export const MINIMUM_AIR_DISTANCE: readonly WorkedExample[] = [
  cell('PD2', 1500, 0.5),
  cell('PD3', 1500, 0.8),
  cell('PD2', 2500, 1.5),
  cell('PD2', 4000, 3),
  cell('PD2', 6000, 5.5),
];
