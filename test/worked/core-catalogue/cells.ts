import { CELL, type WorkedExample } from '../worked-example.ts';

const CATALOGUE = { publication: 'TDK, Ferrite cores, catalogue 980817-001', origin: 'publication', because: CELL, tolerance: 0 } as const;
const LIBRARY = {
  publication: 'an open magnetics library, wires after IEC 60317-0-1',
  origin: 'publication',
  because: CELL,
  tolerance: 0,
} as const;
const BODY = {
  publication: 'IEC 479-1:1994 in a copy on a page of notes',
  place: 'table of total impedances',
  origin: 'publication',
  because: CELL,
  tolerance: 0,
} as const;
const CORE = 'ferrite-cores/1998/core';

const core = (key: string, area: number, length: number): WorkedExample[] => [
  { ...CATALOGUE, place: `${key}: effective area`, table: `${CORE}/area`, inputs: { key }, printed: area, unit: 'mm²' },
  { ...CATALOGUE, place: `${key}: effective length`, table: `${CORE}/length`, inputs: { key }, printed: length, unit: 'mm' },
];
const enamel = (key: number, one: number, two: number): WorkedExample[] => [
  {
    ...LIBRARY,
    place: `${key * 1000} mm, grade 1`,
    table: 'iec-60317-0-1/undated/enamel/grade1',
    inputs: { key },
    printed: one,
    unit: 'mm',
  },
  {
    ...LIBRARY,
    place: `${key * 1000} mm, grade 2`,
    table: 'iec-60317-0-1/undated/enamel/grade2',
    inputs: { key },
    printed: two,
    unit: 'mm',
  },
];

/** Cells of the tables that a transformer is judged by. */
export const TRANSFORMER_CELLS: readonly WorkedExample[] = [
  ...core('EE16', 19.2, 35),
  ...core('EF20', 33.5, 44.9),
  ...core('EE13', 17.1, 30.2),
  ...core('RM6', 37, 29),
  { ...CATALOGUE, place: 'PC40 at 100 °C', table: 'ferrite-cores/1998/saturation/hot', inputs: { key: 'PC40' }, printed: 390, unit: 'mT' },
  { ...CATALOGUE, place: 'PC50 at 100 °C', table: 'ferrite-cores/1998/saturation/hot', inputs: { key: 'PC50' }, printed: 380, unit: 'mT' },
  ...enamel(0.1e-3, 0.117, 0.125),
  ...enamel(0.2e-3, 0.226, 0.239),
  ...enamel(0.25e-3, 0.281, 0.297),
  { ...BODY, table: 'iec-60479-1/1994/body-impedance/half', inputs: { key: 100 }, printed: 1875, unit: 'Ω' },
  { ...BODY, place: 'row of 220 V', table: 'iec-60479-1/1994/body-impedance/half', inputs: { key: 220 }, printed: 1350, unit: 'Ω' },
  {
    publication: 'two published test reports',
    place: 'distance through insulation, reinforced',
    origin: 'publication',
    because: CELL,
    tolerance: 0,
    table: 'iec-62368-1/2018/solid-insulation/least',
    inputs: { key: 'reinforced' },
    printed: 0.4,
    unit: 'mm',
  },
];
