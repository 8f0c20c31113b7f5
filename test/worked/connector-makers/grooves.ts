import { CELL, type WorkedExample } from '../worked-example.ts';

const CATALOGUE = { publication: 'HARTING catalogue', edition: 'October 2013', origin: 'publication', unit: 'mm', tolerance: 0 } as const;
const cell = (degree: string, printed: number): WorkedExample => ({
  ...CATALOGUE,
  place: `page 169, measuring clearance and creepage, X at pollution degree ${degree}`,
  table: 'iec-60664-1/2007/groove-width/X',
  inputs: { key: degree },
  printed,
  because: CELL,
});
const third = (clearance: number, printed: number, because: string): WorkedExample => ({
  ...CATALOGUE,
  place: `page 169, reduction of X: pollution degree 2, clearance ${clearance} mm`,
  formula: 'insulation/least-slot-width',
  inputs: { printed: 1e-3, clearance: clearance / 1000 },
  printed,
  because,
});

/** Width below which a groove is bridged, and the third of a small clearance. */
export const GROOVES: readonly WorkedExample[] = [
  cell('1', 0.25),
  cell('2', 1),
  cell('3', 1.5),
  third(6, 1, 'from 3 mm of clearance the printed width holds'),
  third(3, 1, 'at 3 mm the reduction has ended'),
  third(2.1, 0.7, 'a third'),
  {
    ...third(2.1, 0.25, 'a third would be more than the printed width'),
    place: 'page 169, reduction of X: pollution degree 1, clearance 2.1 mm',
    inputs: { printed: 0.25e-3, clearance: 2.1e-3 },
  },
];
