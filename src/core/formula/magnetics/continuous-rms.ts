import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const TRIANGLE = 3; // mean square of a ramp from -1 to 1 is a third

/** Rms of a current that stands on a pedestal: a trapezoid in a share of the period. */
export const continuousRms = defineFormula({
  id: 'magnetics/continuous-rms',
  tex: String.raw`I_{rms} = I_m \sqrt{D} \sqrt{1 + (\Delta I / 2 I_m)^2 / 3},\ I_m = \hat I - \Delta I / 2`,
  text: 'I_rms = ( I_pk − dI / 2 ) · sqrt( D ) · sqrt( 1 + ( dI / ( 2 · I_m ) )² / 3 )',
  source: cite('circuit-theory', 'rms of a trapezoid', 'secondary', {
    alsoBy: ['a maker’s data sheet of switched controllers', 'a maker’s application note on transformer design'],
  }),
  inputs: {
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current', moves: 'up' },
    rise: { symbol: 'dI', unit: 'A', means: 'rise of the current' },
    share: { symbol: 'D', unit: '1', means: 'share of the period', moves: 'up' },
  },
  output: { symbol: 'I_rms', unit: 'A', means: 'rms current' },
  validity: 'continuous mode',
  compute: ({ peak, rise, share }) => {
    const middle = peak - rise / 2;
    const swing = rise / 2 / middle;
    return middle * Math.sqrt(share) * Math.sqrt(1 + (swing * swing) / TRIANGLE);
  },
});
