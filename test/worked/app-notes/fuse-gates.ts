import { CELL, type WorkedExample } from '../worked-example.ts';

const S = { unit: 'ms', tolerance: 0, because: CELL, origin: 'publication' } as const;
const SHEET = { ...S, publication: 'Fuse makers’ data sheets, IEC 60127-2 sheet 5' } as const;
const SMALL = { ...S, publication: 'Data sheet of an 8 × 4.5 mm time-lag fuse' } as const;
const GUIDE = { origin: 'publication', tolerance: 0, because: CELL, publication: 'Littelfuse, fuseology selection guide' } as const;

const gate = (key: number, column: 'least' | 'most', seconds: number): WorkedExample => ({
  ...SHEET,
  table: `iec-60127/undated/time-gates/${column}`,
  place: `time gates, ${key} times the rating, at ${column}`,
  inputs: { key },
  printed: seconds * 1000,
});
const small = (key: number, column: 'subminiatureLeast' | 'subminiatureMost', seconds: number): WorkedExample => ({
  ...SMALL,
  table: `iec-60127/undated/time-gates/${column}`,
  place: `time gates, ${key} times the rating, ${column}`,
  inputs: { key },
  printed: seconds * 1000,
});

/** Time gates of cartridges, of radial and surface-mounted fuses, and of American ones; what American ones break at 250 V. */
export const FUSE_GATES: readonly WorkedExample[] = [
  gate(1.5, 'least', 3600),
  gate(2.1, 'most', 1800),
  gate(2.75, 'least', 0.75),
  gate(2.75, 'most', 80),
  gate(4, 'least', 0.095),
  gate(4, 'most', 5),
  gate(10, 'least', 0.01),
  gate(10, 'most', 0.15),
  small(2.1, 'subminiatureMost', 120),
  small(2.75, 'subminiatureLeast', 0.4),
  small(2.75, 'subminiatureMost', 10),
  small(4, 'subminiatureLeast', 0.15),
  small(4, 'subminiatureMost', 3),
  { ...GUIDE, table: 'ul-248-14/undated/gates/most', place: '135 %: within an hour', inputs: { key: 1.35 }, printed: 1, unit: 'h' },
  { ...GUIDE, table: 'ul-248-14/undated/gates/most', place: '200 %: within 2 minutes', inputs: { key: 2 }, printed: 120_000, unit: 'ms' },
  { ...GUIDE, table: 'ul-248-14/undated/interrupting/breaks', place: '250 V, to 1 A', inputs: { key: 1 }, printed: 35, unit: 'A' },
  { ...GUIDE, table: 'ul-248-14/undated/interrupting/breaks', place: '250 V, to 3.5 A', inputs: { key: 3.5 }, printed: 100, unit: 'A' },
  { ...GUIDE, table: 'ul-248-14/undated/interrupting/breaks', place: '250 V, to 10 A', inputs: { key: 10 }, printed: 200, unit: 'A' },
  {
    publication: 'Elsmar forum, transformer overload with fuses',
    place: '2.1 times the rated current of an IEC 60127 fuse, here 1 A, for 30 minutes',
    origin: 'publication',
    formula: 'board/current-of-gate',
    inputs: { multiple: 2.1, rated: 1 },
    printed: 2.1,
    unit: 'A',
    tolerance: 0,
    because: CELL,
  },
];
