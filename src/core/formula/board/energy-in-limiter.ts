import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Energy that the part which limits the inrush takes in one plugging in: its share, by resistance, of what the whole loop turns into heat. */
export const energyInLimiter = defineFormula({
  id: 'board/energy-in-limiter',
  tex: String.raw`E = \frac{C \hat V^2}{2} \cdot \frac{R_s}{R_s + R_l}`,
  text: 'E = C · V_pk ² / 2 · R_s / ( R_s + R_l )',
  source: cite('circuit-theory', 'energy lost in charging a capacitor, whatever the resistance', 'reasoned', {
    alsoBy: ['an NTC maker: joule rating at least C V² / 2'],
  }),
  inputs: {
    capacitance: { symbol: 'C', unit: 'F', means: 'bulk capacitance', moves: 'up' },
    crest: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' },
    limiter: { symbol: 'R_s', unit: 'Ω', means: 'resistance of the part that limits the inrush', moves: 'up' },
    line: { symbol: 'R_l', unit: 'Ω', means: 'resistance of the mains', moves: 'down' },
  },
  output: { symbol: 'E', unit: 'J', means: 'energy into the limiting part' },
  validity: 'an empty capacitor; one plugging in, without those before it',
  compute: ({ capacitance, crest, limiter, line }) => (((capacitance * crest * crest) / 2) * limiter) / (limiter + line),
});
