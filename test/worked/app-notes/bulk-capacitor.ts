import { HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

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
];
