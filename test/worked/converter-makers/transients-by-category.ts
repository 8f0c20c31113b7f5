import { CELL, type Misprint, type WorkedExample } from '../worked-example.ts';

const CATEGORIES = ['I', 'II', 'III', 'IV'] as const;
const PRINTED: readonly (readonly [mains: number, ...cells: number[]])[] = [
  [150, 800, 1500, 2500, 4000],
  [300, 1500, 2500, 4000, 6000],
  [600, 2500, 4000, 6000, 8000],
  [1000, 4000, 6000, 8000, 1200],
];

const cell = (mains: number, category: string, printed: number): WorkedExample => ({
  table: `iec-60664-1/2007/rated-impulse-voltage/${category}`,
  publication: 'RECOM, protection from transient voltages',
  place: `table by category, ${mains} V, category ${category}`,
  origin: 'publication',
  inputs: { key: mains },
  printed,
  unit: 'V peak',
  tolerance: 0,
  because: CELL,
});

const all = PRINTED.flatMap(([mains, ...cells]) => CATEGORIES.map((category, index) => cell(mains, category, cells[index]!)));

/** A converter maker's own copy of table F.1. */
export const TRANSIENTS_BY_CATEGORY: readonly WorkedExample[] = all.filter(({ printed }) => printed !== 1200);

export const TRANSIENTS_MISPRINT: readonly Misprint[] = all
  .filter(({ printed }) => printed === 1200)
  .map((example) => ({
    ...example,
    wrongBecause: 'it would lie below the 8000 V of category III in the same row; the standard has 12000 V',
  }));
