import { CELL, type WorkedExample } from '../worked-example.ts';

const TOTALS = [
  {
    place: 'table C.2: 530 V peak, reinforced clearance',
    peak: 530,
    more: 0.4,
    printed: 4.4,
    publication: 'IEC 60950-1 test report of an adapter',
  },
  {
    place: 'table of clearances: 428 V peak, reinforced',
    peak: 428,
    more: 0.2,
    printed: 4.2,
    publication: 'IEC 60950-1 test report, table of clearances',
  },
] as const;

/** Totals that reports print; on the mains of 230 V the first part of each is 4.0 mm. */
export const ADDITIONAL_60950: readonly WorkedExample[] = TOTALS.flatMap(({ place, peak, more, printed, publication }): WorkedExample[] => [
  {
    publication,
    place: `${place}, what is more than 4.0 mm`,
    origin: 'publication',
    table: 'iec-60950-1/2005/additional-clearance/reinforced',
    inputs: { key: peak },
    printed: more,
    unit: 'mm',
    tolerance: 0,
    because: CELL,
  },
  {
    publication,
    place,
    origin: 'publication',
    formula: 'insulation/older-clearance',
    inputs: { byMains: 4e-3, more: more / 1000 },
    printed,
    unit: 'mm',
    tolerance: 1e-9,
    because: 'a sum in double precision',
  },
]);
