import { CELL, HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const SERVO = {
  publication: 'HexaFloorRide, servo power wiring resistance',
  origin: 'publication',
  formula: 'load/voltage-at-socket',
  unit: 'V',
  tolerance: 0,
  because: CELL,
} as const;
const CABLES = {
  publication: 'Data set of voltage drops in USB cables, beniceco',
  origin: 'publication',
  formula: 'load/voltage-at-socket',
  unit: 'V',
  tolerance: 0.0005,
  because: HALF_OF_LAST_DIGIT,
} as const;

const cable = (metres: number, current: number, resistance: number, atDevice: number): WorkedExample => ({
  ...CABLES,
  place: `AWG 20, ${metres} m at ${current} A: ${atDevice} V at the device of 5 V`,
  inputs: { voltage: atDevice, current, resistance },
  printed: 5,
});

/** What is read at the far end of a cable, with the drop added back. */
export const CABLE_DROP: readonly WorkedExample[] = [
  { ...SERVO, place: '1.5 Ω and 0.4 Ω at 0.1 A leave 4.81 V', inputs: { voltage: 4.81, current: 0.1, resistance: 1.9 }, printed: 5 },
  cable(1, 2, 0.0666, 4.867),
  cable(1.5, 3, 0.0999, 4.7),
  cable(2, 3, 0.1332, 4.6),
  cable(2, 5, 0.1332, 4.334),
];
