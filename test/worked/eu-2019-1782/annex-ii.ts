import { CELL, HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const REGULATION = { publication: 'Commission Regulation (EU) 2019/1782', edition: '2019' } as const;
const LINES = {
  basic: { to1: [0, 0.5, 0.16], to49: [0.071, -0.0014, 0.67], above: [0, 0, 0.88] },
  low: { to1: [0, 0.517, 0.087], to49: [0.0834, -0.0014, 0.609], above: [0, 0, 0.87] },
  multiple: { to1: [0, 0.497, 0.067], to49: [0.075, 0, 0.561], above: [0, 0, 0.86] },
} as const;
const NAMEPLATE = { to1: 1, to49: 49, above: 250 } as const;

const cells = Object.entries(LINES).flatMap(([family, bands]) =>
  Object.entries(bands).flatMap(([band, printed]) =>
    ['A', 'B', 'C'].map(
      (letter, index): WorkedExample => ({
        ...REGULATION,
        table: `eu-2019-1782/2019/average-efficiency/${family}${letter}`,
        place: `annex II, 1(b), ${family}, ${band}; read in the data file of legislation.gov.uk`,
        origin: 'standard',
        inputs: { key: NAMEPLATE[band as keyof typeof NAMEPLATE] },
        printed: printed[index]!,
        unit: '1',
        tolerance: 0,
        because: CELL,
      }),
    ),
  ),
);

const required = (
  place: string,
  power: number,
  [a, b, c]: readonly [number, number, number],
  printed: number,
  origin: 'standard' | 'closed-form',
): WorkedExample => ({
  ...REGULATION,
  formula: 'load/required-efficiency',
  place: `annex II, 1(b): ${place}`,
  origin,
  inputs: { power, a, b, c },
  printed,
  unit: '1',
  tolerance: origin === 'standard' ? 0 : 0.00005,
  because: origin === 'standard' ? CELL : HALF_OF_LAST_DIGIT,
});

/** Every coefficient of the regulation, and what they make of common nameplates. */
export const ANNEX_II: readonly WorkedExample[] = [
  ...cells,
  required('5 V 1 A', 5, LINES.low.to49, 0.7362, 'closed-form'),
  required('5 V 2 A', 10, LINES.low.to49, 0.787, 'closed-form'),
  required('5 V 2.4 A', 12, LINES.low.to49, 0.7994, 'closed-form'),
  required('9 V 2 A', 18, LINES.basic.to49, 0.85, 'closed-form'),
  required('12 V 2.5 A', 30, LINES.basic.to49, 0.8695, 'closed-form'),
  required('20 V 3.25 A', 65, LINES.basic.above, 0.88, 'standard'),
  required('1 W, basic', 1, LINES.basic.to1, 0.66, 'closed-form'),
  required('1 W, low voltage', 1, LINES.low.to1, 0.604, 'closed-form'),
  required('1 W, multiple', 1, LINES.multiple.to1, 0.564, 'closed-form'),
  required('5 V 0.5 A, below 0.55 A and so basic', 2.5, LINES.basic.to49, 0.7316, 'closed-form'),
];
