import { HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const BASIC = { a: 0.071, b: -0.0014, c: 0.67 } as const;
const AN4164 = { publication: 'STMicroelectronics AN4164', edition: '023660 Rev 1', origin: 'publication' } as const;
const AN4165 = { publication: 'STMicroelectronics AN4165', edition: '023661 Rev 1', origin: 'publication' } as const;

const required = (
  power: number,
  printed: number,
  tolerance: number,
): Pick<WorkedExample, 'inputs' | 'printed' | 'unit' | 'tolerance' | 'because'> & {
  formula: string;
} => ({
  formula: 'load/required-efficiency',
  inputs: { power, ...BASIC },
  printed,
  unit: '%',
  tolerance,
  because: HALF_OF_LAST_DIGIT,
});

const lightLoad = (line: number, input: number, printed: number): WorkedExample => ({
  ...AN4165,
  place: `page 18, table 9, ${line} V: 25 mW out`,
  formula: 'load/efficiency',
  inputs: { output: 0.025, input: input / 1000 },
  printed,
  unit: '%',
  tolerance: 0.05 + (0.05 / input) * printed,
  because: 'half of the last digit of the result and of the input power',
});

/** Two demonstration boards: what level VI asks of 4.2 W and 12 W, and measured efficiencies. */
export const FLYBACK_BOARDS: readonly WorkedExample[] = [
  { ...AN4164, place: 'page 15, requirement for 4.2 W', ...required(4.2, 76.6, 0.05) },
  { ...AN4165, place: 'page 17, requirement for 12 W', ...required(12, 82.96, 0.005) },
  {
    ...AN4164,
    place: 'page 18, table 10, 90 V: 0.78 W from 1 W',
    formula: 'load/efficiency',
    inputs: { output: 0.78, input: 1 },
    printed: 78,
    unit: '%',
    tolerance: 0.5,
    because: HALF_OF_LAST_DIGIT,
  },
  lightLoad(90, 44.9, 55.7),
  lightLoad(115, 46.3, 54),
  lightLoad(150, 49.1, 50.9),
  lightLoad(180, 51.5, 48.5),
  lightLoad(230, 55, 45.5),
  lightLoad(265, 59, 42.4),
];
