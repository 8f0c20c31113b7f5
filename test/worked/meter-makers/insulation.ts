import { CELL, type WorkedExample } from '../worked-example.ts';

const COLUMN = 'din-vde-0701-0702/2008/insulation-resistance/least';

/** Insulation resistance asked for, as makers of appliance testers print it. */
export const INSULATION_LINES: readonly WorkedExample[] = [
  {
    publication: 'Manual of an appliance tester, annex A',
    origin: 'publication',
    place: 'DIN VDE 0701-1:2000, class II, 2.0 MΩ',
    table: COLUMN,
    inputs: { key: 'basic' },
    printed: 2,
    unit: 'MΩ',
    tolerance: 0,
    because: CELL,
  },
];
