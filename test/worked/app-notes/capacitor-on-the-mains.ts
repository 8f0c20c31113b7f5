import { HALF_OF_LAST_DIGIT, type Misprint, type WorkedExample } from '../worked-example.ts';

/** Schoolbook capacitor across 240 V. */
export const CAPACITOR_ON_THE_MAINS: readonly WorkedExample[] = [
  {
    formula: 'insulation/bridging-current',
    publication: 'Textbook example of a filter capacitor, reprinted at holooly.com',
    place: 'entry 1233606: 100 nF at 240 V 50 Hz',
    origin: 'publication',
    inputs: { frequency: 50, capacitance: 100e-9, voltage: 240 },
    printed: 7.5,
    unit: 'mA',
    tolerance: 0.05,
    because: HALF_OF_LAST_DIGIT,
  },
];

export const CAPACITOR_ON_THE_MAINS_MISPRINT: readonly Misprint[] = [
  {
    formula: 'insulation/bridging-current',
    publication: 'Marc’s pages on power quality, leakage currents in modern technology',
    place: 'leakage in filters: per nanofarad at 230 V',
    origin: 'publication',
    inputs: { frequency: 50, capacitance: 1e-9, voltage: 230 },
    printed: 73,
    unit: 'µA',
    tolerance: 0.5,
    because: HALF_OF_LAST_DIGIT,
    wrongBecause: 'the product is 72.26 µA, which rounds to 72; 73 needs 232 V',
  },
];
