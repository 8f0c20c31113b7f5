import type { WorkedExample } from '../worked-example.ts';

const BOUND = { formula: 'load/no-failure-bound', origin: 'publication', unit: '1' } as const;

/** What tries without a failure still allow, by figures that people use. */
export const RULE_OF_THREE: readonly WorkedExample[] = [
  {
    ...BOUND,
    publication: 'Rule of three, public notes that cite Eypasch and others 1995',
    place: 'no adverse event among 1500: fewer than 3 in 1500',
    inputs: { tries: 1500 },
    printed: 0.002,
    tolerance: 0.00001,
    because: 'the rule is the first term of the exact bound',
  },
  {
    ...BOUND,
    publication: 'Rule of three, public notes that cite Eypasch and others 1995',
    place: 'no defect among 100: less than 3 %',
    inputs: { tries: 100 },
    printed: 0.03,
    tolerance: 0.0006,
    because: 'the rule is the first term of the exact bound',
  },
  {
    ...BOUND,
    publication: 'Success run without a failure, C = 1 − R^n',
    place: '59 tries show 95 % reliability at 95 % confidence',
    inputs: { tries: 59 },
    printed: 0.05,
    tolerance: 0.0006,
    because: '59 is the first whole number that does',
  },
  {
    ...BOUND,
    publication: 'Schoolbook',
    origin: 'closed-form',
    place: 'a single try: 1 − 0.05',
    inputs: { tries: 1 },
    printed: 0.95,
    tolerance: 1e-12,
    because: 'by hand',
  },
];
