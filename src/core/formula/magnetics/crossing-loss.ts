import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const ONE_IN = 6; // mean of a rising straight line times a falling one, over the time of both

/** What a switch loses while its current and its voltage cross, once a period. */
export const crossingLoss = defineFormula({
  id: 'magnetics/crossing-loss',
  tex: String.raw`P = \frac{I V t f}{6}`,
  text: 'P = I · V · t · f / 6',
  source: cite('circuit-theory', 'mean of two straight lines that cross', 'secondary', {
    alsoBy: ['a maker’s data sheet of switched controllers'],
  }),
  inputs: {
    current: { symbol: 'I', unit: 'A', means: 'current before it opens, or after it has closed', moves: 'up' },
    voltage: { symbol: 'V', unit: 'V', means: 'voltage across it while it is open', moves: 'up' },
    time: { symbol: 't', unit: 's', means: 'time in which they cross', moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'loss' },
  validity:
    'both cross in the same time; up to three times as much where the voltage has risen before the current falls, less where capacitance holds the voltage down',
  compute: ({ current, voltage, time, frequency }) => (current * voltage * time * frequency) / ONE_IN,
});
