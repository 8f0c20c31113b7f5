import { CELL, type WorkedExample } from '../worked-example.ts';

const FORUM = {
  publication: 'Certifiers’ committee, decision 489 on IEC 60335-1',
  edition: 'as copied on a forum',
  origin: 'publication',
  tolerance: 0,
  because: CELL,
} as const;
const LIBRARY = { ...FORUM, publication: 'OpenMagnetics MKF', edition: 'IEC_60335-1.json and Insulation.cpp', origin: 'program' } as const;

/** Layers and solid pieces as household appliances ask for them. */
export const HOUSEHOLD: readonly WorkedExample[] = [
  {
    ...FORUM,
    table: 'iec-60335-1/2010/thin-sheet/layers',
    place: '29.2 and 29.3: supplementary',
    inputs: { key: 'supplementary' },
    printed: 2,
    unit: '1',
  },
  {
    ...FORUM,
    table: 'iec-60335-1/2010/thin-sheet/layers',
    place: '29.2 and 29.3: reinforced',
    inputs: { key: 'reinforced' },
    printed: 3,
    unit: '1',
  },
  {
    ...LIBRARY,
    table: 'iec-60335-1/2010/solid-insulation/least',
    place: 'one solid piece, supplementary',
    inputs: { key: 'supplementary' },
    printed: 1,
    unit: 'mm',
  },
  {
    ...LIBRARY,
    table: 'iec-60335-1/2010/solid-insulation/least',
    place: 'one solid piece, reinforced',
    inputs: { key: 'reinforced' },
    printed: 2,
    unit: 'mm',
  },
  {
    ...LIBRARY,
    table: 'iec-60335-1/2010/solid-insulation/tested',
    place: 'table 19, category II, 300 V',
    inputs: { key: 'reinforced' },
    printed: 0.6,
    unit: 'mm',
  },
];
