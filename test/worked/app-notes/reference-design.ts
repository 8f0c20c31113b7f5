import { CELL, HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const GUIDE = { publication: 'Microchip, SMPS AC/DC reference design user’s guide', edition: 'DS70320B', origin: 'publication' } as const;

/** Output power and efficiency as a supply's guide works them out. */
export const REFERENCE_DESIGN: readonly WorkedExample[] = [
  {
    ...GUIDE,
    place: 'page 103, B.5: 12 V at 30 A',
    formula: 'load/power',
    inputs: { voltage: 12, current: 30 },
    printed: 360,
    unit: 'W',
    tolerance: 0,
    because: CELL,
  },
  {
    ...GUIDE,
    place: 'page 103, example B-1: 110 V at 3.7 A',
    formula: 'load/power',
    inputs: { voltage: 110, current: 3.7 },
    printed: 407,
    unit: 'W',
    tolerance: 0.5,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    ...GUIDE,
    place: 'page 103, example B-1: 299.8 W of 407 W',
    formula: 'load/efficiency',
    inputs: { output: 299.8, input: 407 },
    printed: 74,
    unit: '%',
    tolerance: 0.5,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    publication: 'Design World EE Network',
    edition: 'June 2019',
    place: 'page 31: 20 V and 3 A, 60 W with a standard cable',
    origin: 'publication',
    formula: 'load/power',
    inputs: { voltage: 20, current: 3 },
    printed: 60,
    unit: 'W',
    tolerance: 0,
    because: CELL,
  },
];
