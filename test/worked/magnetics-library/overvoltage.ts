import { CELL, type Misprint, type WorkedExample } from '../worked-example.ts';

const LIBRARY = { publication: 'OpenMagnetics MKF', origin: 'program', tolerance: 0, because: CELL } as const;

const overvoltage = (mains: number): WorkedExample => ({
  ...LIBRARY,
  formula: 'insulation/temporary-overvoltage',
  place: `src/constructive_models/Insulation.cpp, temporary overvoltage of IEC 62368-1 at ${mains} V`,
  inputs: { mains },
  printed: 2000,
  unit: 'V peak',
});

/** What an open library makes of the temporary overvoltage. */
export const OVERVOLTAGE: readonly WorkedExample[] = [overvoltage(120), overvoltage(230)];

export const TABLE_12_MISPRINT: readonly Misprint[] = [
  {
    ...LIBRARY,
    table: 'iec-60664-1/2007/rated-impulse-voltage/II',
    place: 'src/data/insulation_standards/IEC_62368-1.json, table 12, category II, 230 V',
    inputs: { key: 230 },
    printed: 1500,
    unit: 'V peak',
    wrongBecause: 'the block keeps the values in order under keys of 50, 150, 240, 480 and 690 V; published reports take 2500 V at 230 V',
  },
];
