import { CELL, type WorkedExample } from '../worked-example.ts';

const CODE = {
  publication: 'European Commission, code of conduct on external power supplies',
  edition: 'version 5, tier 2, as a maker of supplies prints it',
  origin: 'publication',
  tolerance: 0,
  because: CELL,
} as const;
const LINES = { 1: [0, 0.5, 0.169], 49: [0.071, -0.00115, 0.67] } as const;

/** What makers promised each other: coefficients, no-load power, and what they make of 30 W. */
export const CODE_OF_CONDUCT: readonly WorkedExample[] = [
  ...Object.entries(LINES).flatMap(([watts, printed]) =>
    (['a', 'b', 'c'] as const).map(
      (letter, index): WorkedExample => ({
        ...CODE,
        table: `eu-code-of-conduct/5/average-efficiency/${letter}`,
        place: `average efficiency to ${watts} W, ${letter}`,
        inputs: { key: Number(watts) },
        printed: printed[index]!,
        unit: '1',
      }),
    ),
  ),
  { ...CODE, table: 'eu-code-of-conduct/5/no-load/most', place: 'no load, to 49 W', inputs: { key: 49 }, printed: 0.075, unit: 'W' },
  { ...CODE, table: 'eu-code-of-conduct/5/no-load/most', place: 'no load, to 250 W', inputs: { key: 250 }, printed: 0.15, unit: 'W' },
  {
    ...CODE,
    formula: 'load/required-efficiency',
    place: '30 W, tier 2',
    origin: 'closed-form',
    inputs: { power: 30, a: 0.071, b: -0.00115, c: 0.67 },
    printed: 0.877,
    unit: '1',
    tolerance: 0.0005,
    because: 'half of the last digit',
  },
  {
    publication: '10 CFR 430 subpart B appendix Z',
    place: 'derating of several outputs: 15 W printed for the unit, 20 W for its outputs together',
    origin: 'closed-form',
    formula: 'load/derating',
    inputs: { printed: 15, sum: 20 },
    printed: 75,
    unit: '%',
    tolerance: 1e-9,
    because: 'a ratio in double precision',
  },
  {
    publication: '10 CFR 430 subpart B appendix Z',
    place: 'no derating where the outputs together stay below the nameplate',
    origin: 'closed-form',
    formula: 'load/derating',
    inputs: { printed: 20, sum: 15 },
    printed: 100,
    unit: '%',
    tolerance: 0,
    because: CELL,
  },
];
