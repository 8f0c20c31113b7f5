import { CELL, HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

/** Crest of the highest mains in two makers' notes, and what two equal capacitors in series share. */
export const BULK_CAPACITOR: readonly WorkedExample[] = [
  {
    formula: 'touch/peak-of-mains',
    publication: 'Rohm, AC-DC design note, selecting critical components: input capacitor C1',
    place: '264 V a.c. times 1.41, from which a part of 400 V is chosen',
    origin: 'publication',
    inputs: { rms: 264 },
    printed: 372,
    unit: 'V',
    tolerance: 1.4,
    because: 'the note rounds √2 to 1.41 (1.1 V here) and the result down',
  },
  {
    formula: 'touch/peak-of-mains',
    publication: 'Power Integrations AN-17',
    place: 'page 8, highest rectified voltage at 265 V a.c.',
    origin: 'publication',
    inputs: { rms: 265 },
    printed: 375,
    unit: 'V',
    tolerance: 0.5,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    formula: 'board/half-of-crest',
    publication: 'Schoolbook',
    place: 'two equal capacitors in series on 374 V',
    origin: 'closed-form',
    inputs: { crest: 374 },
    printed: 187,
    unit: 'V',
    tolerance: 0,
    because: 'half',
  },
  {
    formula: 'board/usual-capacitance',
    publication: 'Rohm, AC-DC design note, selecting critical components: input capacitor C1',
    place: '85 to 264 V, 4 W at 2 µF for each watt: 8 µF, 10 µF fitted',
    origin: 'publication',
    inputs: { perWatt: 2, power: 4 },
    printed: 8,
    unit: 'µF',
    tolerance: 1e-9,
    because: 'a product in double precision',
  },
  ...(
    [
      ['Power Integrations AN-23', 'table of input capacitors, whole range', 'fromAmerican', 'least', 2],
      ['Power Integrations AN-23', 'table of input capacitors, whole range', 'fromAmerican', 'most', 3],
      ['Power Integrations AN-23', 'table of input capacitors, 230 V', 'europeanOnly', 'least', 1],
      ['Rohm, AC-DC design note, selecting critical components: input capacitor C1', '180 to 264 V', 'europeanOnly', 'most', 1],
    ] as const
  ).map(
    ([publication, place, key, column, printed]): WorkedExample => ({
      table: `bench/2026/bulk-per-watt/${column}`,
      publication,
      place: `${place}, microfarads for each watt, ${column}`,
      origin: 'publication',
      inputs: { key },
      printed,
      unit: '1',
      tolerance: 0,
      because: CELL,
    }),
  ),
];
