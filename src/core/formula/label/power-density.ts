import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const CUBIC_CENTIMETRES = 1e6; // per m³, exact

/** Claimed watts in each cubic centimetre of the case. */
export const powerDensity = defineFormula({
  id: 'label/power-density',
  tex: String.raw`p = \frac{P}{a\,b\,c}`,
  text: 'p = P / ( a · b · c )',
  source: cite('bench', 'watts per cubic centimetre of the case', 'common-practice'),
  inputs: {
    power: { symbol: 'P', unit: 'W', means: 'power claimed', moves: 'up' },
    one: { symbol: 'a', unit: 'm', means: 'one side of the case', moves: 'down' },
    two: { symbol: 'b', unit: 'm', means: 'another side', moves: 'down' },
    three: { symbol: 'c', unit: 'm', means: 'the third side', moves: 'down' },
  },
  output: { symbol: 'p', unit: '1', means: 'watts per cubic centimetre' },
  validity: 'a case that is about a box; pins and cord left out',
  compute: ({ power, one, two, three }) => power / (one * two * three * CUBIC_CENTIMETRES),
});
