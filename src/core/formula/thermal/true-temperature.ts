import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const fourth = (t: number): number => t * t * t * t;

/** Temperature of a surface from what a camera shows at another emissivity. Radiated power taken as the fourth power of temperature, air as clear. */
export const trueTemperature = defineFormula({
  id: 'thermal/true-temperature',
  tex: String.raw`T = \sqrt[4]{\frac{\varepsilon_c T_c^4 + (1-\varepsilon_c) T_{rc}^4 - (1-\varepsilon) T_r^4}{\varepsilon}}`,
  text: 'T = ( ( ε_c · T_c⁴ + ( 1 − ε_c ) · T_r⁴ − ( 1 − ε ) · T_r⁴ ) / ε )^¼',
  source: cite('heat-theory', 'grey-body radiation; the measurement formula of thermal-camera manuals with clear air', 'secondary', {
    disagrees: ['a camera for 8 to 14 µm follows an exponent nearer 4.4 at 330 K: this form is an approximation'],
  }),
  inputs: {
    shown: { symbol: 'T_c', unit: 'K', means: 'temperature shown', moves: 'up' },
    cameraEmissivity: { symbol: 'ε_c', unit: '1', means: 'emissivity set in the camera', from: 0.1, to: 1 },
    emissivity: { symbol: 'ε', unit: '1', means: 'emissivity of the surface', from: 0.6, to: 1 },
    reflected: { symbol: 'T_r', unit: 'K', means: 'reflected temperature' },
  },
  output: { symbol: 'T', unit: 'K', means: 'temperature of the surface' },
  validity: 'emissivity 0.6 and above; bare metal is refused; distances of a bench',
  compute: ({ shown, cameraEmissivity, emissivity, reflected }) => {
    const seen = cameraEmissivity * fourth(shown) + (1 - cameraEmissivity) * fourth(reflected) - (1 - emissivity) * fourth(reflected);
    return Math.sqrt(Math.sqrt(Math.max(0, seen / emissivity)));
  },
});
