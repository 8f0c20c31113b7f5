import { CELL, type WorkedExample } from '../worked-example.ts';

const FORM = {
  publication: 'EN 62368-1 test-report form',
  place: 'notes on potential ignition sources; a second form states the same',
  origin: 'publication',
  tolerance: 0,
  because: CELL,
  unit: 'W',
} as const;
const LAB = {
  publication: 'UL Solutions, questions and answers on IEC 62368-1',
  origin: 'publication',
  tolerance: 0,
  because: CELL,
} as const;

/** Ignition sources and classes of power sources; 60 V peak with 0.3 A is one that arcs, and what a mains joint makes of 0.2 A. */
export const IGNITION: readonly WorkedExample[] = [
  { ...FORM, table: 'iec-62368-1/2018/ignition-source/peakVoltage', inputs: { key: 'arcing' }, printed: 50, unit: 'V' },
  { ...FORM, table: 'iec-62368-1/2018/ignition-source/power', inputs: { key: 'arcing' }, printed: 15 },
  { ...FORM, table: 'iec-62368-1/2018/ignition-source/power', inputs: { key: 'resistive' }, printed: 15 },
  { ...FORM, table: 'iec-62368-1/2018/ignition-source/powerAtOnce', inputs: { key: 'resistive' }, printed: 100 },
  {
    ...LAB,
    table: 'iec-62368-1/2018/power-source/power',
    place: 'clause 6.2.2: first class, worst load fault and worst source fault',
    inputs: { key: 'first' },
    printed: 15,
    unit: 'W',
  },
  {
    ...LAB,
    table: 'iec-62368-1/2018/power-source/after',
    place: 'clause 6.2.2: first class, read after',
    inputs: { key: 'first' },
    printed: 3000,
    unit: 'ms',
  },
  {
    ...LAB,
    publication: 'IEC 62368-1 test-report forms',
    table: 'iec-62368-1/2018/power-source/power',
    place: 'second class',
    inputs: { key: 'second' },
    printed: 100,
    unit: 'W',
  },
  {
    ...LAB,
    publication: 'IEC 62368-1 test-report forms',
    table: 'iec-62368-1/2018/power-source/after',
    place: 'second class, read after',
    inputs: { key: 'second' },
    printed: 5000,
    unit: 'ms',
  },
  {
    ...FORM,
    formula: 'board/arcing-product',
    place: 'notes on potential ignition sources, with 60 V peak and 0.3 A: 18, above 15',
    origin: 'closed-form',
    inputs: { peak: 60, current: 0.3 },
    printed: 18,
    tolerance: 1e-12,
    because: 'a product in double precision',
  },
];
