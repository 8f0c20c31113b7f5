import { HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const AN19 = {
  publication: 'Power Integrations AN-19',
  origin: 'publication',
  formula: 'load/efficiency',
  unit: '%',
  tolerance: 0.05,
  because: HALF_OF_LAST_DIGIT,
} as const;

/** Two supplies of 34 W with every loss listed. */
export const LOSS_BUDGET: readonly WorkedExample[] = [
  { ...AN19, place: 'page 1, loss table, discrete design', inputs: { output: 34.27, input: 39.38 }, printed: 87 },
  { ...AN19, place: 'page 1, loss table, integrated design', inputs: { output: 34.21, input: 38.63 }, printed: 88.6 },
];
