import { ZERO_CELSIUS_K } from '../../quantity/unit.ts';
import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const COPPER_K = 234.5; // °C below zero at which the resistance of copper, drawn on as a straight line, would vanish

/** Mean temperature of a copper winding by what its resistance has become. */
export const windingByResistance = defineFormula({
  id: 'thermal/winding-by-resistance',
  tex: String.raw`t_2 = \frac{R_2}{R_1} (234.5 + t_1) - 234.5`,
  text: 't_2 = R_2 / R_1 · ( 234.5 + t_1 ) − 234.5',
  source: cite('heat-theory', 'resistance of copper, as the safety standards of electrical equipment measure windings', 'secondary', {
    alsoBy: ['a transformer maker, temperature measurement by EN 61558-1: 234.5 for copper'],
  }),
  inputs: {
    hot: { symbol: 'R_2', unit: 'Ω', means: 'resistance hot', moves: 'up' },
    cold: { symbol: 'R_1', unit: 'Ω', means: 'resistance cold', moves: 'down' },
    start: { symbol: 't_1', unit: 'K', means: 'temperature of the winding when it was cold', moves: 'up' },
  },
  output: { symbol: 't_2', unit: 'K', means: 'mean temperature of the winding' },
  validity: 'copper, −50 to 180 °C; both readings by the same leads; hot at the moment of switching off',
  compute: ({ hot, cold, start }) => (hot / cold) * (COPPER_K + start - ZERO_CELSIUS_K) - COPPER_K + ZERO_CELSIUS_K,
});
