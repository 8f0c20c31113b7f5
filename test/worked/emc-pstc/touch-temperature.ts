import { CELL, type WorkedExample } from '../worked-example.ts';

const plastic = (key: string, printed: number, place: string): WorkedExample => ({
  table: 'iec-62368-1/2018/touch-temperature/plastic',
  publication: 'Safety engineers’ list of the IEEE',
  place,
  origin: 'publication',
  inputs: { key },
  printed,
  unit: '°C',
  tolerance: 0,
  because: CELL,
});

/** Plastic, first limit: the ends of the scale by contact time, and the figure compared without scaling to another ambient. */
export const TOUCH_TEMPERATURE: readonly WorkedExample[] = [
  plastic('over1min', 48, 'thread of 2 September 2021: from 48 °C, longest contact'),
  plastic('1to10s', 77, 'message 77022: table 38, TS1 plastic'),
  plastic('under1s', 94, 'thread of 2 September 2021: to 94 °C, shortest contact'),
];
