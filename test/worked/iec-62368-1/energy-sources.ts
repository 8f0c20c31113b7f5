import { CELL, type Misprint, type WorkedExample } from '../worked-example.ts';

const EXTRACT = {
  publication: 'National technical regulation that adopts IEC 62368-1, text extract',
  origin: 'standard',
  unit: 'mA',
  tolerance: 0,
  because: CELL,
} as const;

/** Touch current at low frequency. */
export const ENERGY_SOURCES: readonly WorkedExample[] = [
  { ...EXTRACT, place: 'table 4, ES1, rms', table: 'iec-62368-1/2018/touch-current/rms', inputs: { key: 'es1' }, printed: 0.5 },
  { ...EXTRACT, place: 'table 4, ES1, peak', table: 'iec-62368-1/2018/touch-current/peak', inputs: { key: 'es1' }, printed: 0.707 },
];

export const ENERGY_SOURCES_MISPRINT: readonly Misprint[] = [
  {
    ...EXTRACT,
    place: 'table 4, ES2, rms',
    table: 'iec-62368-1/2018/touch-current/rms',
    inputs: { key: 'es2' },
    printed: 0.5,
    wrongBecause: 'the extract repeats its ES1 figure; its own formula 5 mA + 0.95 f gives 5 mA at low frequency',
  },
];
