import type { WorkedExample } from '../worked-example.ts';

const EMISSIVITY = 0.75 * 0.92; // emissivity and transmittance stand as one factor in front of the object
const SEEN = 4.5;
const OTHER_TERMS = 0.5;
const REFLECTED = (OTHER_TERMS * EMISSIVITY) / (1 - EMISSIVITY); // the radiation whose share is the printed 0.5
const fourthRoot = (radiation: number): number => Math.sqrt(Math.sqrt(radiation));

/** The example in the manuals is in units of radiation; radiation goes with the fourth power of temperature. */
export const MEASUREMENT_FORMULA: readonly WorkedExample[] = [
  {
    formula: 'thermal/true-temperature',
    publication: 'FLIR camera manuals',
    place: 'the measurement formula: 4.5 seen, emissivity 0.75, transmittance 0.92, other terms 0.5',
    origin: 'publication',
    inputs: { shown: fourthRoot(SEEN), cameraEmissivity: 1, emissivity: EMISSIVITY, reflected: fourthRoot(REFLECTED) },
    states: (temperature) => temperature ** 4,
    printed: 6,
    unit: 'K',
    tolerance: 0.05,
    because: 'half of the last printed digit of 6.0',
  },
];
