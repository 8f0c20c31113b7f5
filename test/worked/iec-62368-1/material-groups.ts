import { CELL, type WorkedExample } from '../worked-example.ts';

const group = (key: 'I' | 'II' | 'IIIa' | 'IIIb', printed: number): WorkedExample => ({
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

/** Least comparative tracking index of each group, and what ordinary FR-4 is sold with. */
export const MATERIAL_GROUPS: readonly WorkedExample[] = [
  group('I', 600),
  group('II', 400),
  group('IIIa', 175),
  group('IIIb', 100),
  {
    table: 'laminate-makers/2026/tracking/least',
    publication: 'Listing with a sheet of ordinary FR-4 laminate',
    place: 'comparative tracking index, at least',
    origin: 'publication',
    inputs: { key: 'fr4' },
    printed: 175,
    unit: '1',
    tolerance: 0,
    because: CELL,
  },
];
