import { CELL, type WorkedExample } from '../worked-example.ts';

const REPORT = {
  publication: 'IEC 62368-1 test report of a mains product',
  place: 'tables 5.4.2 and 5.4.3: 420 V peak, 240 V rms, category II, pollution degree 2',
  origin: 'publication',
  unit: 'mm',
  tolerance: 0,
  because: CELL,
} as const;

/** Basic 1.5 mm and reinforced 3.0 mm clearance, reinforced 5.0 mm creepage at 240 V rms. */
export const MAINS_PRODUCT: readonly WorkedExample[] = [
  { ...REPORT, table: 'iec-62368-1/2018/clearance-withstand/B_PD2', inputs: { key: 2500 }, printed: 1.5 },
  { ...REPORT, table: 'iec-62368-1/2018/clearance-withstand/R_PD2', inputs: { key: 2500 }, printed: 3 },
  { ...REPORT, formula: 'insulation/required-clearance', inputs: { byPeak: 1.27e-3, byTransient: 1.5e-3, altitude: 1 }, printed: 1.5 },
  { ...REPORT, formula: 'insulation/required-clearance', inputs: { byPeak: 2.54e-3, byTransient: 3e-3, altitude: 1 }, printed: 3 },
  { ...REPORT, formula: 'insulation/reinforced-creepage', inputs: { basic: 2.5e-3 }, printed: 5 },
  { ...REPORT, formula: 'insulation/not-below-clearance', inputs: { creepage: 5e-3, clearance: 3e-3 }, printed: 5 },
];
