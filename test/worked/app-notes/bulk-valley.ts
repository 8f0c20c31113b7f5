import { HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const BOOK = { publication: 'Schoolbook', origin: 'closed-form' } as const;
const NOTE = {
  publication: 'Power Integrations AN-17',
  place: 'page 8: 85 V 60 Hz, 15 W at 80 %, 33 µF',
  inputs: { crest: Math.SQRT2 * 85, power: 15 / 0.8, capacitance: 33e-6, interval: 1 / 120 },
} as const;
/** Built backwards: at half the crest the rectifier conducts for a sixth of a period; at 50 Hz behind a bridge the power that leads there follows. */
const HALF = { crest: 100, capacitance: 100e-6, frequency: 50 } as const;
const powerToHalf = (interval: number): number => (0.75 * HALF.crest * HALF.crest * HALF.capacitance) / (2 * (interval - 1 / 300));

/** Valley of the bulk voltage: with a given conduction time as a maker's note has it, and solved together with it. */
export const BULK_VALLEY: readonly WorkedExample[] = [
  {
    publication: NOTE.publication,
    place: `${NOTE.place}, conduction taken as 3.2 ms`,
    origin: 'publication',
    formula: 'board/valley-after',
    inputs: { ...NOTE.inputs, conduction: 3.2e-3 },
    printed: 93,
    unit: 'V',
    tolerance: 0.5,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    publication: NOTE.publication,
    place: `${NOTE.place}, conduction solved for: the fixed 3.2 ms was optimistic`,
    origin: 'own',
    formula: 'board/bulk-valley',
    inputs: { ...NOTE.inputs, frequency: 60 },
    printed: 85.6,
    unit: 'V',
    tolerance: 0.3,
    because: 'worked out beside this project with another method of iteration',
  },
  {
    publication: NOTE.publication,
    place: `${NOTE.place}, the conduction that belongs to 85.6 V`,
    origin: 'own',
    formula: 'board/conduction-time',
    inputs: { valley: 85.6, crest: NOTE.inputs.crest, frequency: 60 },
    printed: 2.06,
    unit: 'ms',
    tolerance: 0.01,
    because: 'worked out beside this project',
  },
  {
    ...BOOK,
    place: 'half of the crest at 50 Hz: a sixth of a period',
    formula: 'board/conduction-time',
    inputs: { valley: 50, crest: 100, frequency: 50 },
    printed: 10 / 3,
    unit: 'ms',
    tolerance: 1e-9,
    because: 'double precision',
  },
  {
    ...BOOK,
    place: 'a bridge, loaded so that the valley is half the crest',
    formula: 'board/bulk-valley',
    inputs: { ...HALF, power: powerToHalf(0.01), interval: 0.01 },
    printed: 50,
    unit: 'V',
    tolerance: 1e-9,
    because: 'double precision',
  },
  {
    ...BOOK,
    place: 'a single diode, loaded so that the valley is half the crest',
    formula: 'board/bulk-valley',
    inputs: { ...HALF, power: powerToHalf(0.02), interval: 0.02 },
    printed: 50,
    unit: 'V',
    tolerance: 1e-9,
    because: 'double precision',
  },
  {
    ...BOOK,
    place: 'no load: the valley is the crest',
    formula: 'board/bulk-valley',
    inputs: { ...HALF, power: 0, interval: 0.01 },
    printed: 100,
    unit: 'V',
    tolerance: 1e-9,
    because: 'double precision',
  },
  {
    ...BOOK,
    place: 'half a period of 50 Hz',
    formula: 'board/interval-between-charges',
    inputs: { share: 0.5, frequency: 50 },
    printed: 10,
    unit: 'ms',
    tolerance: 1e-12,
    because: 'a ratio in double precision',
  },
  {
    ...BOOK,
    place: 'half of 18 W',
    formula: 'board/half-of-power',
    inputs: { power: 18 },
    printed: 9,
    unit: 'W',
    tolerance: 0,
    because: 'half',
  },
];
