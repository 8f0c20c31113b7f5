import { CELL, type WorkedExample } from '../worked-example.ts';

/** IEC 479-1:1994 in a copy on a page of notes: volts, then ohms that 5, 50 and 95 of a hundred people have at most. */
const COPY: readonly (readonly [number, number, number, number])[] = [
  [25, 1750, 3250, 6100],
  [50, 1450, 2625, 4375],
  [75, 1250, 2200, 3500],
  [100, 1200, 1875, 3200],
  [125, 1125, 1625, 2875],
  [220, 1000, 1350, 2125],
  [700, 750, 1100, 1550],
  [1000, 700, 1050, 1500],
];

export const BODY_IMPEDANCE: readonly WorkedExample[] = COPY.flatMap(([key, ...cells]) =>
  (['few', 'half', 'most'] as const).map(
    (column, index): WorkedExample => ({
      table: `iec-60479-1/1994/body-impedance/${column}`,
      publication: 'idea2ic, notes on body impedance after IEC 479-1',
      edition: '1994',
      place: `table of total impedances, ${column}, ${key} V`,
      origin: 'publication',
      inputs: { key },
      printed: cells[index]!,
      unit: 'Ω',
      tolerance: 0,
      because: CELL,
    }),
  ),
);
