import { CELL, type WorkedExample } from '../worked-example.ts';

const group = (key: 'I' | 'II' | 'III', printed: number): WorkedExample => ({
  table: 'iec-62368-1/2018/material-group/leastCti',
  publication: 'IEC 60664-1',
  place: `4.8.1.3, group ${key}; read in the technical section of a terminal maker, page 38`,
  origin: 'standard',
  inputs: { key },
  printed,
  unit: '1',
  tolerance: 0,
  because: CELL,
});

/** Least comparative tracking index; group III runs from the foot of IIIb. */
export const MATERIAL_GROUPS: readonly WorkedExample[] = [group('I', 600), group('II', 400), group('III', 100)];
