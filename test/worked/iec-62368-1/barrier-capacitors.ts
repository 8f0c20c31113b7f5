import { CELL, type WorkedExample } from '../worked-example.ts';

/** How many in series may bridge reinforced insulation. */
export const BARRIER_CAPACITORS: readonly WorkedExample[] = [
  {
    table: 'iec-60384-14/2013/bridging/acrossBasic',
    publication: 'UL Solutions, questions and answers on IEC 62368-1',
    place: 'table G.9, 2018 edition: one Y2 where 2.5 kV is required',
    origin: 'publication',
    inputs: { key: 'Y2' },
    printed: 1,
    unit: '1',
    tolerance: 0,
    because: CELL,
  },
  {
    table: 'iec-60384-14/2013/bridging/inSeries',
    publication: 'UL Solutions, questions and answers on IEC 62368-1',
    place: 'G.11 and table G.12: one Y1 to 300 V mains, category II',
    origin: 'publication',
    inputs: { key: 'Y1' },
    printed: 1,
    unit: '1',
    tolerance: 0,
    because: CELL,
  },
  {
    table: 'iec-60384-14/2013/bridging/inSeries',
    publication: 'Safety engineers’ list of the IEEE',
    place: 'messages 21132 and 00920: two Y2 in series from mains to a circuit that is touched',
    origin: 'publication',
    inputs: { key: 'Y2' },
    printed: 2,
    unit: '1',
    tolerance: 0,
    because: CELL,
  },
];
