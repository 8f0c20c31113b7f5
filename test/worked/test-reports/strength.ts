import { CELL, type WorkedExample } from '../worked-example.ts';

const V = { origin: 'publication', tolerance: 0, because: CELL } as const;

/** Test voltages in published reports and on the page of a wire maker. */
export const STRENGTH: readonly WorkedExample[] = [
  {
    ...V,
    formula: 'insulation/strength-voltage',
    publication: 'IEC 62368-1 test report of a mains product',
    place: 'table 5.4.9: reinforced insulation at 230 V, 500 V peak: 4000 V d.c.',
    inputs: { transient: 4000, peak: 800, overvoltage: 4000 },
    printed: 4000,
    unit: 'V',
  },
  {
    ...V,
    table: 'iec-60950-1/2005/strength/rms',
    publication: 'IEC 60950-1 test report of an adapter',
    place: 'table C.2: 530 V peak',
    inputs: { key: 'reinforced' },
    printed: 3000,
    unit: 'V',
  },
  {
    ...V,
    table: 'iec-60950-1/2005/strength/rms',
    publication: 'Furukawa, certificates of winding wire',
    place: 'information technology equipment, basic and supplementary',
    inputs: { key: 'basic' },
    printed: 1500,
    unit: 'V',
  },
  {
    ...V,
    table: 'iec-60950-1/2005/strength/rms',
    publication: 'Furukawa, certificates of winding wire',
    place: 'information technology equipment, reinforced',
    inputs: { key: 'reinforced' },
    printed: 3000,
    unit: 'V',
  },
  {
    ...V,
    formula: 'insulation/crest-of-test',
    publication: 'Schoolbook',
    place: '2828 V rms are 4000 V peak',
    origin: 'closed-form',
    inputs: { rms: 2828.427 },
    printed: 4000,
    unit: 'V',
    tolerance: 0.001,
    because: 'half of the last digit of what goes in, times √2',
  },
];
