import { CELL, type WorkedExample } from '../worked-example.ts';

const EXTRACT = {
  publication: 'National technical regulation that adopts IEC 62368-1, text extract',
  table: 'iec-62368-1/2018/touch-voltage/direct',
  origin: 'standard',
  unit: 'V',
  tolerance: 0,
  because: CELL,
} as const;

/** Direct voltage that may be touched. */
export const TOUCH_VOLTAGE: readonly WorkedExample[] = [
  { ...EXTRACT, place: 'table 4, ES1, direct voltage', inputs: { key: 'es1' }, printed: 60 },
  { ...EXTRACT, place: 'table 4, ES2, direct voltage', inputs: { key: 'es2' }, printed: 120 },
];
