import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Least average active efficiency for a nameplate power; coefficients from the table row that covers it. */
export const requiredEfficiency = defineFormula({
  id: 'load/required-efficiency',
  tex: String.raw`\eta_{min} = a \ln\frac{P}{\mathrm{W}} + b\,\frac{P}{\mathrm{W}} + c`,
  text: 'η_min = a · ln( P / W ) + b · P / W + c',
  source: cite('eu-2019-1782', 'annex II, 1(b)', 'official-text', { alsoBy: ['10 CFR 430 level VI: the same for single outputs'] }),
  inputs: {
    power: { symbol: 'P', unit: 'W', means: 'nameplate output power' },
    a: { symbol: 'a', unit: '1', means: 'factor of the logarithm' },
    b: { symbol: 'b', unit: '1', means: 'factor of the power', moves: 'up' },
    c: { symbol: 'c', unit: '1', means: 'constant', moves: 'up' },
  },
  output: { symbol: 'η_min', unit: '1', means: 'least average efficiency', show: 'percent' },
  validity: 'nameplate power to 250 W',
  compute: ({ power, a, b, c }) => a * Math.log(power) + b * power + c,
});
