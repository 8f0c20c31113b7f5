import type { WorkedExample } from '../worked-example.ts';

const ICE_POINT_K = 273.15;
const HOUR_S = 3600;
const kelvin = (celsius: number): number => celsius + ICE_POINT_K;
const rule = (around: number, printed: number): WorkedExample => ({
  formula: 'endurance/life-from-new',
  publication: 'COSEL technical note 100',
  place: `a capacitor of 1000 h at 105 °C, at ${around} °C by the 10 K rule`,
  origin: 'publication',
  inputs: { rated: 1000 * HOUR_S, ratedTemperature: kelvin(105), around: kelvin(around), ratedHeating: 5, heating: 5 },
  printed,
  unit: 'h',
  tolerance: 1e-6,
  because: 'a whole number of doublings',
});
const withRipple = (heating: number, printed: number): WorkedExample => ({
  formula: 'endurance/life-from-new',
  publication: 'Rubycon, lifetime calculation formula',
  place: `2000 h at 105 °C, used at 65 °C, core heated by ${heating} K of ripple; the sheet gives the formula, the figure is worked out by hand`,
  origin: 'closed-form',
  inputs: { rated: 2000 * HOUR_S, ratedTemperature: kelvin(105), around: kelvin(65), ratedHeating: 5, heating },
  printed,
  unit: 'h',
  tolerance: 0.5,
  because: 'half an hour of the hours kept',
});

/** Lives of electrolytic capacitors as their makers and users print them, in hours. */
export const CAPACITOR_LIFE: readonly WorkedExample[] = [
  rule(45, 64_000),
  rule(55, 32_000),
  rule(65, 16_000),
  withRipple(5, 32_000),
  withRipple(1.25, 43_484),
  withRipple(0, 47_552),
  withRipple(11.25, 16_069),
  {
    formula: 'endurance/around-the-can',
    publication: 'Schoolbook',
    place: 'a can of 70 °C whose core is heated by 5.5 K, α 1.1: 5 K above the air',
    origin: 'closed-form',
    inputs: { can: kelvin(70), heating: 5.5, ratio: 1.1 },
    printed: 65,
    unit: '°C',
    tolerance: 1e-9,
    because: 'a quotient in double precision',
  },
];
