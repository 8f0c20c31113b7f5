import type { WorkedExample } from '../worked-example.ts';

const BOOK = { publication: 'Schoolbook', origin: 'closed-form' } as const;

/** Ratios on the board. */
export const BOARD_ALGEBRA: readonly WorkedExample[] = [
  {
    ...BOOK,
    place: '7.5 µF of 10 µF',
    formula: 'board/share-of-marked',
    inputs: { measured: 7.5e-6, marked: 10e-6 },
    printed: 75,
    unit: '%',
    tolerance: 1e-9,
    because: 'a ratio in double precision',
  },
  {
    ...BOOK,
    place: '22 µF charged to 373 V',
    formula: 'board/stored-energy',
    inputs: { capacitance: 22e-6, crest: 373 },
    printed: 1.530419,
    unit: 'J',
    tolerance: 1e-9,
    because: 'a product in double precision',
  },
];
