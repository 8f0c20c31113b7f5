import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Voltage that lies a fixed step below the lower edge of the window. */
export const belowWindow = defineFormula({
  id: 'load/below-window',
  tex: String.raw`V = V_w - \Delta V`,
  text: 'V = V_w − ΔV',
  source: cite('usb-pd', 'vSrcValid', 'secondary', { alsoBy: ['kernel source of a port controller'] }),
  inputs: {
    edge: { symbol: 'V_w', unit: 'V', means: 'lower edge of the window', moves: 'up' },
    step: { symbol: 'ΔV', unit: 'V', means: 'how far below', moves: 'down' },
  },
  output: { symbol: 'V', unit: 'V', means: 'lowest voltage for a moment' },
  validity: 'none given',
  compute: ({ edge, step }) => edge - step,
});
