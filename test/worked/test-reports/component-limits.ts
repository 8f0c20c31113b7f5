import { CELL, type WorkedExample } from '../worked-example.ts';

const row = (key: string, printed: number, place: string): WorkedExample => ({
  publication: 'IEC 60950-1 test report of a 30 W adapter',
  place: `table 4.5, ${place}`,
  origin: 'publication',
  table: 'iec-60950-1/2005/component-temperature/most',
  inputs: { key },
  printed,
  unit: '°C',
  tolerance: 0,
  because: CELL,
});

/** What a published report allows each part. */
export const COMPONENT_LIMITS: readonly WorkedExample[] = [
  row('boardFr4', 130, 'printed board'),
  row('electrolyticCapacitor', 105, 'electrolytic capacitor'),
  row('yCapacitor', 125, 'Y capacitor'),
  {
    publication: 'IEC 60950-1 test report, thermal page',
    place: 'plastic touched by the user: 70 K of rise at 25 °C',
    origin: 'publication',
    table: 'iec-60950-1/2005/touch-temperature/most',
    inputs: { key: 'plastic' },
    printed: 95,
    unit: '°C',
    tolerance: 0,
    because: CELL,
  },
  {
    publication: 'IEC 60950-1 test report, thermal page',
    place: 'class A by resistance: 75 K of rise at 25 °C',
    origin: 'publication',
    table: 'iec-62368-1/2018/winding-temperature/resistance',
    inputs: { key: 'A' },
    printed: 100,
    unit: '°C',
    tolerance: 0,
    because: CELL,
  },
  {
    publication: 'IEC 60950-1 test report, thermal page',
    place: 'class B by resistance: 95 K of rise at 25 °C',
    origin: 'publication',
    table: 'iec-62368-1/2018/winding-temperature/resistance',
    inputs: { key: 'B' },
    printed: 120,
    unit: '°C',
    tolerance: 0,
    because: CELL,
  },
];
