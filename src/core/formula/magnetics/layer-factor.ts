import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const THREE_QUARTERS = Math.exp(0.75 * Math.log(Math.PI / 4)); // a round wire as the square foil of the same area
const PORTIONS = 3;

/** How much a winding of several layers resists more at a frequency: skin and proximity. */
export const layerFactor = defineFormula({
  id: 'magnetics/layer-factor',
  tex: String.raw`F = X \left[\frac{\sinh 2X + \sin 2X}{\cosh 2X - \cos 2X} + \frac{2 (m^2 - 1)}{3} \frac{\sinh X - \sin X}{\cosh X + \cos X}\right],\ X = (\pi/4)^{3/4} \frac{d}{\delta} \sqrt{\eta}`,
  text: 'F by X = ( π / 4 )^¾ · d / δ · sqrt( η ) and m layers',
  source: cite('wire-handbook', 'formula of Dowell', 'memory'),
  inputs: {
    diameter: { symbol: 'd', unit: 'm', means: 'bare diameter of a strand', moves: 'up' },
    depth: { symbol: 'δ', unit: 'm', means: 'skin depth', moves: 'down' },
    layers: { symbol: 'm', unit: '1', means: 'layers of the winding', moves: 'up' },
    filled: { symbol: 'η', unit: '1', means: 'share of the layer that is copper, along it', moves: 'up' },
  },
  output: { symbol: 'F', unit: '1', means: 'resistance over that to direct current' },
  validity: 'sine current; a winding that fills its layers',
  compute: ({ diameter, depth, layers, filled }) => {
    const x = THREE_QUARTERS * (diameter / depth) * Math.sqrt(filled);
    const skin = (Math.sinh(2 * x) + Math.sin(2 * x)) / (Math.cosh(2 * x) - Math.cos(2 * x));
    const proximity = (Math.sinh(x) - Math.sin(x)) / (Math.cosh(x) + Math.cos(x));
    return x * (skin + ((2 * (layers * layers - 1)) / PORTIONS) * proximity);
  },
});
