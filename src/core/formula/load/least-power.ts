import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Least power that keeps a printed one: printed watts are nominal volts times amperes, and what the window allows to the volts it allows to them. */
export const leastPower = defineFormula({
  id: 'load/least-power',
  tex: String.raw`P_{min} = P_c \frac{V_w}{V_n}`,
  text: 'P_min = P_c · V_w / V_n',
  source: cite('house', 'a voltage inside its window makes no power too small', 'reasoned'),
  inputs: {
    claimed: { symbol: 'P_c', unit: 'W', means: 'power printed, or nominal voltage times the current printed', moves: 'up' },
    edge: { symbol: 'V_w', unit: 'V', means: 'lower edge of the window', moves: 'up' },
    nominal: { symbol: 'V_n', unit: 'V', means: 'nominal voltage', moves: 'down' },
  },
  output: { symbol: 'P_min', unit: 'W', means: 'least power that keeps the claim' },
  validity: 'none given',
  compute: ({ claimed, edge, nominal }) => (claimed * edge) / nominal,
});
