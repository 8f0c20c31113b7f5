import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Temperature of a part at another load: its rise grows with the loss of the whole unit, a little less than in proportion. */
export const atOtherLoad = defineFormula({
  id: 'thermal/at-other-load',
  tex: String.raw`T' = T_a + (T - T_a)\left(\frac{P'}{P}\right)^k`,
  text: "T' = T_a + ( T − T_a ) · ( P' / P )^( k )",
  source: cite('heat-theory', 'exponent 1 by conduction, about 0.8 by free convection', 'memory'),
  inputs: {
    temperature: { symbol: 'T', unit: 'K', means: 'temperature as read', moves: 'up' },
    ambient: { symbol: 'T_a', unit: 'K', means: 'ambient' },
    loss: { symbol: 'P', unit: 'W', means: 'loss at the load of the reading' },
    lossThen: { symbol: "P'", unit: 'W', means: 'loss at the other load' },
    exponent: { symbol: 'k', unit: '1', means: 'how the rise follows the loss', from: 0.5, to: 1.3 },
  },
  output: { symbol: "T'", unit: 'K', means: 'temperature at the other load' },
  validity: 'the same mains, cover and position; a loss at most 2.5 times that of the reading; each part keeps its share of the loss',
  compute: ({ temperature, ambient, loss, lossThen, exponent }) =>
    ambient + (temperature - ambient) * Math.exp(exponent * Math.log(lossThen / loss)),
});
