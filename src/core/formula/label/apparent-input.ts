import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** The most that can go in by the label: no more power comes out than volts times amperes that go in, whatever the efficiency and the power factor are. */
export const apparentInput = defineFormula({
  id: 'label/apparent-input',
  tex: String.raw`P = V_l\,(I + r)`,
  text: 'P = V_l · ( I + r )',
  source: cite('circuit-theory', 'active power is at most volts times amperes, and what comes out at most what goes in', 'reasoned'),
  inputs: {
    voltage: { symbol: 'V_l', unit: 'V', means: 'lower end of the input range', moves: 'up' },
    current: { symbol: 'I', unit: 'A', means: 'greatest input current as printed', moves: 'up' },
    rounding: { symbol: 'r', unit: 'A', means: 'half of the last digit printed', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'most that can come out' },
  validity: 'rms figures, as labels print them',
  compute: ({ voltage, current, rounding }) => voltage * (current + rounding),
});
