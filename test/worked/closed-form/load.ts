import type { WorkedExample } from '../worked-example.ts';

const BOOK = { publication: 'Schoolbook', origin: 'closed-form', tolerance: 0 } as const;

/** Means, ratios and straight lines. */
export const LOAD_ALGEBRA: readonly WorkedExample[] = [
  {
    ...BOOK,
    formula: 'load/average-of-four',
    place: 'mean of 80, 84, 86 and 85 %',
    inputs: { quarter: 0.8, half: 0.84, threeQuarters: 0.86, full: 0.85 },
    printed: 83.75,
    unit: '%',
    because: 'a mean',
  },
  {
    ...BOOK,
    formula: 'load/average-of-four',
    place: 'a single good point counts a quarter',
    inputs: { quarter: 0, half: 0, threeQuarters: 0, full: 0.88 },
    printed: 22,
    unit: '%',
    because: 'a mean',
  },
  {
    ...BOOK,
    formula: 'load/share',
    place: '1.8 A of 2.4 A',
    inputs: { held: 1.8, claimed: 2.4 },
    printed: 75,
    unit: '%',
    because: 'a ratio',
  },
  {
    ...BOOK,
    formula: 'load/current-at-voltage',
    place: 'a line of 90 mΩ from 5.12 V at 0 A to 4.94 V at 2 A crosses 5.03 V half way',
    inputs: { currentBefore: 0, currentAfter: 2, voltageBefore: 5.12, voltageAfter: 4.94, edge: 5.03, between: 0 },
    printed: 1,
    unit: 'A',
    because: 'a straight line',
  },
  {
    ...BOOK,
    formula: 'load/current-at-voltage',
    place: 'the same, with the curve 0.1 A off the line',
    inputs: { currentBefore: 0, currentAfter: 2, voltageBefore: 5.12, voltageAfter: 4.94, edge: 5.03, between: 0.1 },
    printed: 1.1,
    unit: 'A',
    because: 'a straight line and a sum',
  },
  {
    ...BOOK,
    formula: 'load/current-at-voltage',
    place: 'a third of the way down from 5.00 V at 1.0 A to 4.70 V at 1.6 A',
    inputs: { currentBefore: 1, currentAfter: 1.6, voltageBefore: 5, voltageAfter: 4.7, edge: 4.9, between: 0 },
    printed: 1.2,
    unit: 'A',
    because: 'a straight line',
  },
  {
    ...BOOK,
    formula: 'load/value-at-current',
    place: 'a quarter of the way from 4 W at 0.8 A to 6 W at 1.2 A',
    inputs: { current: 0.9, currentBefore: 0.8, currentAfter: 1.2, before: 4, after: 6 },
    printed: 4.5,
    unit: 'W',
    because: 'a straight line',
  },
  {
    ...BOOK,
    formula: 'load/knee-ratio',
    place: '0.9 A at the lowest mains, 1.2 A at the highest',
    inputs: { low: 0.9, high: 1.2 },
    printed: 0.75,
    unit: '1',
    because: 'a ratio',
  },
];
