import { HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const MESSAGE = {
  publication: 'Safety engineers’ list of the IEEE',
  edition: '25 June 2002',
  place: 'message 25732: 4700 pF across the reinforced insulation of a class II adapter',
  origin: 'publication',
  unit: 'mA',
} as const;
const CAPACITANCE = 4.7e-9;

const at = (voltage: number, frequency: number, printed: number): WorkedExample => ({
  ...MESSAGE,
  formula: 'insulation/bridging-current',
  inputs: { frequency, capacitance: CAPACITANCE, voltage },
  printed,
  tolerance: 0.0005,
  because: HALF_OF_LAST_DIGIT,
});

const fromAmerica = (highestVoltage: number, printed: number): WorkedExample => ({
  ...MESSAGE,
  formula: 'insulation/current-at-highest-mains',
  inputs: { current: 0.213e-3, voltage: 120, frequency: 60, highestVoltage, highestFrequency: 50 },
  printed,
  tolerance: 0.0005 + (0.0005 * highestVoltage * 50) / (120 * 60),
  because: 'half of the last digit of both printed currents',
});

/** One capacitor at four mains, and the first of the four carried to two of the others. */
export const BRIDGING_CAPACITOR: readonly WorkedExample[] = [
  at(120, 60, 0.213),
  at(220, 50, 0.325),
  at(240, 50, 0.354),
  at(264, 50, 0.39),
  fromAmerica(240, 0.354),
  fromAmerica(264, 0.39),
];
