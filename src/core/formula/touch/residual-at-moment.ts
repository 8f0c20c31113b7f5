import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** A reading taken a little early or late, carried to the moment the limit names along the same exponential. */
export const residualAtMoment = defineFormula({
  id: 'touch/residual-at-moment',
  tex: String.raw`V_2 = V_0\left(\frac{V}{V_0}\right)^{t_2/t}`,
  text: 'V_2 = V_0 · exp( ln( V / V_0 ) · t_2 / t )',
  source: cite('circuit-theory', 'discharge of a capacitor through a resistor', 'reasoned'),
  inputs: {
    start: { symbol: 'V_0', unit: 'V', means: 'voltage at the moment of unplugging' },
    voltage: { symbol: 'V', unit: 'V', means: 'voltage at the moment of reading', moves: 'up' },
    after: { symbol: 't', unit: 's', means: 'time from unplugging to the reading', moves: 'up' },
    moment: { symbol: 't_2', unit: 's', means: 'time that the limit names', moves: 'down' },
  },
  output: { symbol: 'V_2', unit: 'V', means: 'voltage at the time that the limit names' },
  validity: 'a plain exponential; readings within a tenth of the time that the limit names',
  compute: ({ start, voltage, after, moment }) => (voltage <= 0 ? 0 : start * Math.exp((Math.log(voltage / start) * moment) / after)),
});
