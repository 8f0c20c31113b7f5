import { CELL, type WorkedExample } from '../worked-example.ts';

const AMPLIFIER = {
  publication: 'Texas Instruments, AMC1411-Q1 data sheet',
  edition: 'SBASAB3, October 2021',
  place: '8.2.2.1, insulation coordination',
  origin: 'publication',
  tolerance: 0,
  because: CELL,
} as const;

/** A data sheet that walks through insulation coordination for a 1000 V system in category II. */
export const ISOLATION_AMPLIFIER: readonly WorkedExample[] = [
  { ...AMPLIFIER, table: 'iec-60664-1/2007/rated-impulse-voltage/II', inputs: { key: 1000 }, printed: 6000, unit: 'V peak' },
  { ...AMPLIFIER, table: 'iec-60664-1/2007/next-impulse/next', inputs: { key: 6000 }, printed: 8000, unit: 'V peak' },
  { ...AMPLIFIER, table: 'iec-60664-1/2007/clearance-impulse/PD2', inputs: { key: 8000 }, printed: 8, unit: 'mm' },
];
