import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Power that a continuous converter of fixed frequency takes at its current limit. */
export const continuousPower = defineFormula({
  id: 'magnetics/continuous-power',
  tex: String.raw`P = V D (\hat I - \Delta I / 2)`,
  text: 'P = V · D · ( I_pk − dI / 2 )',
  source: cite('circuit-theory', 'mean of a trapezoid times the rail', 'secondary', {
    alsoBy: ['a maker’s data sheet of switched controllers'],
  }),
  inputs: {
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail' },
    share: { symbol: 'D', unit: '1', means: 'share of the period', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
    rise: { symbol: 'dI', unit: 'A', means: 'rise of the current', moves: 'down' },
  },
  output: { symbol: 'P', unit: 'W', means: 'power into the core' },
  validity: 'fixed frequency, continuous mode',
  compute: ({ rail, share, peak, rise }) => rail * share * (peak - rise / 2),
});
