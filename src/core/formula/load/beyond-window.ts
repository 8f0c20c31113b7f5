import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Voltage that lies a fixed step beyond an edge of the window. */
export const beyondWindow = defineFormula({
  id: 'load/beyond-window',
  tex: String.raw`V = V_w + \Delta V`,
  text: 'V = V_w + ΔV',
  source: cite('usb-pd', 'vSrcValid', 'secondary', { alsoBy: ['kernel source of a port controller'] }),
  inputs: {
    edge: { symbol: 'V_w', unit: 'V', means: 'upper edge of the window', moves: 'up' },
    step: { symbol: 'ΔV', unit: 'V', means: 'how far beyond', moves: 'up' },
  },
  output: { symbol: 'V', unit: 'V', means: 'highest voltage a device must stand' },
  validity: 'none given',
  compute: ({ edge, step }) => edge + step,
});
