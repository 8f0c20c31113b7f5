import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/**
 * Unplugged at moments that have nothing to do with the mains, one try starts at V sin φ with φ anywhere. The chance that n tries all start
 * below sin(π/2 · α^(1/n)) of the crest is α, so the worst of them, divided by that, bounds a start at the crest.
 */
export const boundOverTries = defineFormula({
  id: 'touch/bound-over-tries',
  tex: String.raw`V_b = \frac{V}{\sin\left(\frac{\pi}{2}\,\alpha^{1/n}\right)}`,
  text: 'V_b = V / sin( π/2 · exp( ln( α ) / n ) )',
  source: cite('circuit-theory', 'a sine met at a random moment, n times', 'reasoned'),
  inputs: {
    voltage: { symbol: 'V', unit: 'V', means: 'worst of the tries', moves: 'up' },
    tries: { symbol: 'n', unit: '1', means: 'tries made', moves: 'down', from: 1 },
    chance: { symbol: 'α', unit: '1', means: 'chance that is left to be wrong', moves: 'down' },
  },
  output: { symbol: 'V_b', unit: 'V', means: 'bound for a start at the crest' },
  validity: 'unplugged by hand, without looking at the phase; every try counted',
  compute: ({ voltage, tries, chance }) => voltage / Math.sin((Math.PI / 2) * Math.exp(Math.log(chance) / tries)),
});
