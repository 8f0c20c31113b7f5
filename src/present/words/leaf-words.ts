import type { Templates } from './fill-template.ts';

/** Contributions to an uncertainty, as a line of a budget. */
export const LEAVES: Templates = {
  gain: 'gain of the range',
  counts: 'last digits of the reading',
  resolution: 'resolution',
  method: 'method of measuring',
  typed: 'spread as typed',
  spread: 'spread as typed',
  repeat: 'repetition',
  fit: 'fit of the curve',
  tolerance: 'tolerance of the part',
  estimate: 'spread of the estimate',
};

/** Names of steps that are neither a formula nor a check. */
export const STEP_NAMES: Templates = {
  mainsNominal: 'mains, nominal',
  mainsHigh: 'mains, highest',
  mainsLow: 'mains, lowest',
  highestAmbient: 'highest ambient',
};

/** Claims that are set against findings. */
export const CLAIMS: Templates = {
  current: 'current',
  power: 'power',
  voltage: 'voltage',
};
