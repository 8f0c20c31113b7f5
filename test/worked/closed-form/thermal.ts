import type { WorkedExample } from '../worked-example.ts';

const ICE_POINT_K = 273.15;
const kelvin = (celsius: number): number => celsius + ICE_POINT_K;

/** A shift by the ambient, and grey bodies whose answer is known beforehand. */
export const THERMAL_ALGEBRA: readonly WorkedExample[] = [
  {
    formula: 'thermal/at-highest-ambient',
    publication: 'Schoolbook',
    place: '80 °C at 25 °C, 1.1 K per kelvin, carried to 40 °C',
    origin: 'closed-form',
    inputs: { temperature: kelvin(80), factor: 1.1, ambient: kelvin(25), highest: kelvin(40) },
    printed: 96.5,
    unit: '°C',
    tolerance: 0,
    because: 'a straight line',
  },
  {
    formula: 'thermal/end-of-soak',
    publication: 'Schoolbook',
    place: 'corrections of nothing leave the end where the curve has it',
    origin: 'closed-form',
    inputs: { fitted: kelvin(65), fit: 0, room: 0 },
    printed: 65,
    unit: '°C',
    tolerance: 0,
    because: 'a sum',
  },
  {
    formula: 'thermal/true-temperature',
    publication: 'Schoolbook',
    place: 'the camera is set to the emissivity of the surface: what it shows is true',
    origin: 'closed-form',
    inputs: { shown: kelvin(60), cameraEmissivity: 0.9, emissivity: 0.9, reflected: kelvin(25) },
    printed: 60,
    unit: '°C',
    tolerance: 1e-9,
    because: 'the fourth root of a fourth power in double precision',
  },
  {
    formula: 'thermal/true-temperature',
    publication: 'Schoolbook',
    place: 'a surface as warm as what it reflects has that temperature at any emissivity',
    origin: 'closed-form',
    inputs: { shown: kelvin(25), cameraEmissivity: 0.95, emissivity: 0.6, reflected: kelvin(25) },
    printed: 25,
    unit: '°C',
    tolerance: 1e-9,
    because: 'the fourth root of a fourth power in double precision',
  },
  {
    formula: 'thermal/true-temperature',
    publication: 'Schoolbook',
    place: 'set to 0.95, shows 60 °C; the surface has 0.90, the room 25 °C',
    origin: 'own',
    inputs: { shown: kelvin(60), cameraEmissivity: 0.95, emissivity: 0.9, reflected: kelvin(25) },
    printed: 61.6,
    unit: '°C',
    tolerance: 0.05,
    because: 'half of the last digit kept',
  },
];
