import { CELL, type WorkedExample } from '../worked-example.ts';

/** What a fuse maker's sheet prints. */
export const FUSES: readonly WorkedExample[] = [
  {
    publication: 'Fuse makers’ data sheets, 5 × 20 mm ceramic, IEC 60127-2 sheet 5',
    place: 'breaking capacity at 250 V a.c.',
    origin: 'publication',
    table: 'iec-60127/undated/breaking-capacity/breaks',
    inputs: { key: 'H' },
    printed: 1500,
    unit: 'A',
    tolerance: 0,
    because: CELL,
  },
];
