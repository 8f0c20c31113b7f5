import { cite } from '../../source/source.ts';
import { blackBodyShare } from '../black-body-share.ts';
import { defineFormula } from '../define-formula.ts';

const FROM_UM = 8;
const TO_UM = 14;
const COLDEST_K = 150;
const HOTTEST_K = 1000;
const HALVINGS = 60;

/** Radiated from 8 to 14 µm by a black body, as a multiple of σ. */
const inBand = (t: number): number => (blackBodyShare(TO_UM * t) - blackBodyShare(FROM_UM * t)) * t * t * t * t;

/** Temperature of a surface from what a camera for 8 to 14 µm shows at another emissivity: Planck's law inside the band, air as clear. */
export const trueTemperatureInBand = defineFormula({
  id: 'thermal/true-temperature-in-band',
  tex: String.raw`W(T) = \frac{\varepsilon_c W(T_c) + (1-\varepsilon_c) W(T_r) - (1-\varepsilon) W(T_r)}{\varepsilon},\quad W(T) = \int_{8\,\mu m}^{14\,\mu m} M_\lambda(T)\,d\lambda`,
  text: 'W( T ) = ( ε_c · W( T_c ) + ( 1 − ε_c ) · W( T_r ) − ( 1 − ε ) · W( T_r ) ) / ε',
  source: cite(
    'heat-theory',
    'Planck’s law over 8 to 14 µm in the measurement formula of thermal-camera manuals with clear air',
    'secondary',
    {
      disagrees: ['the fourth power of temperature, which stands for the whole spectrum: kelvin apart where emissivities differ much'],
    },
  ),
  inputs: {
    shown: { symbol: 'T_c', unit: 'K', means: 'temperature shown', moves: 'up' },
    cameraEmissivity: { symbol: 'ε_c', unit: '1', means: 'emissivity set in the camera', from: 0.1, to: 1 },
    emissivity: { symbol: 'ε', unit: '1', means: 'emissivity of the surface', from: 0.6, to: 1 },
    reflected: { symbol: 'T_r', unit: 'K', means: 'reflected temperature' },
  },
  output: { symbol: 'T', unit: 'K', means: 'temperature of the surface' },
  validity: 'emissivity 0.6 and above, the same all over the band; bare metal is refused; distances of a bench; 150 to 1000 K',
  compute: ({ shown, cameraEmissivity, emissivity, reflected }) => {
    const seen = cameraEmissivity * inBand(shown) + (1 - cameraEmissivity) * inBand(reflected) - (1 - emissivity) * inBand(reflected);
    const wanted = seen / emissivity;
    let [low, high] = [COLDEST_K, HOTTEST_K];
    for (let k = 0; k < HALVINGS; k += 1) {
      const middle = (low + high) / 2;
      if (inBand(middle) < wanted) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  },
});
