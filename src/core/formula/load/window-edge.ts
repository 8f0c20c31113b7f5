import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** One edge of a voltage window given as a share of the nominal voltage. */
export const windowEdge = defineFormula({
  id: 'load/window-edge',
  tex: String.raw`V_w = V_n (1 + s\,w)`,
  text: 'V_w = V_n · ( 1 + s · w )',
  source: cite('usb-pd', 'table 4-6, fixed supply: the window is a share of the nominal voltage', 'secondary'),
  inputs: {
    nominal: { symbol: 'V_n', unit: 'V', means: 'nominal voltage', moves: 'up' },
    half: { symbol: 'w', unit: '1', means: 'half width as a share' },
    sign: { symbol: 's', unit: '1', means: '−1 for the lower edge, 1 for the upper' },
  },
  output: { symbol: 'V_w', unit: 'V', means: 'edge of the window' },
  validity: 'none given',
  compute: ({ nominal, half, sign }) => nominal * (1 + sign * half),
});
