import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How long the bulk capacitor feeds the unit when the mains is lost at the valley, the worst moment of the cycle. */
export const holdUp = defineFormula({
  id: 'board/hold-up',
  tex: String.raw`t_h = \frac{C\,(V_v^2 - V_e^2)}{2P}`,
  text: 't_h = C · ( V_v ² − V_e ² ) / ( 2 · P )',
  source: cite('circuit-theory', 'energy that a capacitor gives between two voltages', 'reasoned'),
  inputs: {
    capacitance: { symbol: 'C', unit: 'F', means: 'bulk capacitance', moves: 'up' },
    valley: { symbol: 'V_v', unit: 'V', means: 'bulk voltage when the mains is lost', moves: 'up' },
    end: { symbol: 'V_e', unit: 'V', means: 'bulk voltage down to which it is fed', moves: 'down' },
    power: { symbol: 'P', unit: 'W', means: 'power drawn from the capacitor', moves: 'down' },
  },
  output: { symbol: 't_h', unit: 's', means: 'hold-up time' },
  validity: 'constant power; mains lost at the valley, so the least of any moment; zero where the end lies above the valley',
  compute: ({ capacitance, valley, end, power }) => Math.max(0, capacitance * (valley * valley - end * end)) / (2 * power),
});
