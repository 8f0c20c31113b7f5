import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Voltage that the output rectifier blocks while the switch is on. */
export const rectifierReverse = defineFormula({
  id: 'magnetics/rectifier-reverse',
  tex: String.raw`V_R = V_o + V / n`,
  text: 'V_R = V_o + V / n',
  source: cite('circuit-theory', 'ideal transformer', 'secondary', { alsoBy: ['a maker’s data sheet, and an application note'] }),
  inputs: {
    output: { symbol: 'V_o', unit: 'V', means: 'output voltage', moves: 'up' },
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'up' },
    ratio: { symbol: 'n', unit: '1', means: 'turns ratio', moves: 'down' },
  },
  output: { symbol: 'V_R', unit: 'V', means: 'reverse voltage, without its ringing' },
  validity: 'ringing comes on top',
  compute: ({ output, rail, ratio }) => output + rail / ratio,
});
