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
];
