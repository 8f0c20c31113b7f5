import { CELL, type WorkedExample } from '../worked-example.ts';

const BLOCK = { publication: 'IEC 60335-1', edition: '2010', origin: 'standard', tolerance: 0, because: CELL } as const;
const READ = 'read in the data block of an open magnetics library';

const impulse = (mains: number, printed: number): WorkedExample => ({
  ...BLOCK,
  table: 'iec-60664-1/2007/rated-impulse-voltage/II',
  place: `table 15, category II, to ${mains} V; ${READ}`,
  inputs: { key: mains },
  printed,
  unit: 'V peak',
});
const clearance = (volts: number, printed: number): WorkedExample => ({
  ...BLOCK,
  table: 'iec-60664-1/2007/clearance-impulse/PD2',
  place: `table 16, basic, ${volts} V; ${READ}`,
  inputs: { key: volts },
  printed,
  unit: 'mm',
});
const next = (volts: number, printed: number): WorkedExample => ({
  ...BLOCK,
  table: 'iec-60664-1/2007/next-impulse/next',
  place: `table 16, reinforced takes the next row, ${volts} V; ${READ}`,
  inputs: { key: volts },
  printed,
  unit: 'V peak',
});
const creepage = (volts: number, column: string, printed: number): WorkedExample => ({
  ...BLOCK,
  table: `iec-62368-1/2018/creepage/${column}`,
  place: `table 17, row ${volts} V, ${column}; ${READ}`,
  inputs: { key: volts },
  printed,
  unit: 'mm',
});

/** What the standard for household appliances asks by its own tables is what our tables give: impulse, clearance and creepage at 125 V and 250 V. */
export const HOUSEHOLD_DISTANCES: readonly WorkedExample[] = [
  impulse(50, 500),
  impulse(150, 1500),
  impulse(300, 2500),
  clearance(1500, 0.5),
  clearance(2500, 1.5),
  clearance(4000, 3),
  clearance(6000, 5.5),
  next(2500, 4000),
  { ...clearance(330, 0.8), table: 'iec-60664-1/2007/clearance-impulse/PD3', place: `pollution degree 3 not below 0.8 mm; ${READ}` },
  creepage(250, 'PD2_I', 1.25),
  creepage(250, 'PD2_II', 1.8),
  creepage(250, 'PD2_III', 2.5),
  creepage(250, 'PD3_I', 3.2),
  creepage(250, 'PD3_II', 3.6),
  creepage(250, 'PD3_III', 4),
  creepage(125, 'PD2_I', 0.75),
  creepage(125, 'PD2_II', 1.05),
  creepage(125, 'PD2_III', 1.5),
  creepage(125, 'PD3_I', 1.9),
  creepage(125, 'PD3_II', 2.1),
  creepage(125, 'PD3_III', 2.4),
];
