import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Voltage at the socket from a reading behind leads: the drop in the leads is added back. */
export const voltageAtSocket = defineFormula({
  id: 'load/voltage-at-socket',
  tex: String.raw`V_s = V + I R`,
  text: 'V_s = V + I · R',
  source: cite('circuit-theory', 'Ohm’s law', 'reasoned'),
  inputs: {
    voltage: { symbol: 'V', unit: 'V', means: 'voltage read behind the leads', moves: 'up' },
    current: { symbol: 'I', unit: 'A', means: 'current through the leads', moves: 'up' },
    resistance: { symbol: 'R', unit: 'Ω', means: 'resistance of both leads together', moves: 'up' },
  },
  output: { symbol: 'V_s', unit: 'V', means: 'voltage at the socket' },
  validity: 'd.c.',
  compute: ({ voltage, current, resistance }) => voltage + current * resistance,
});
