import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Rms working voltage between mains side and output of a flyback when nobody measured it: a little above the mains. */
export const workingVoltageEstimate = defineFormula({
  id: 'insulation/working-voltage-estimate',
  tex: String.raw`U_w = k\,U`,
  text: 'U_w = k · U',
  source: cite('house', 'first estimate: 1.10 to 1.20 times the mains; a published report has 281 V at 240 V mains (1.17)', 'memory', {
    alsoBy: ['a published test report: 530 V peak, 281 V rms'],
  }),
  inputs: {
    factor: { symbol: 'k', unit: '1', means: 'working voltage over mains', moves: 'up' },
    mains: { symbol: 'U', unit: 'V', means: 'nominal mains voltage, rms', moves: 'up' },
  },
  output: { symbol: 'U_w', unit: 'V', means: 'estimated working voltage, rms' },
  validity: 'single-switch flyback with bridge rectifier; measure it where the limit depends on it',
  compute: ({ factor, mains }) => factor * mains,
});
