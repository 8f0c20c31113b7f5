import type { Templates } from './fill-template.ts';

/** What an instrument read, as its list of ranges says. */
export const ROLE_WORDS: Templates = {
  mains: 'mains',
  inputPower: 'input power',
  outputVoltage: 'output voltage',
  outputCurrent: 'output current',
  temperature: 'temperature',
  ambient: 'ambient',
  distance: 'distance',
  mass: 'mass',
  resistance: 'resistance',
  insulation: 'insulation',
  capacitance: 'capacitance',
  inductance: 'inductance',
  testVoltage: 'test voltage',
  touchCurrent: 'touch current',
  residualVoltage: 'residual voltage',
  ripple: 'ripple',
  scope: 'waveforms',
  frequency: 'frequency',
};

/** What happened to the sample, and when it stopped being what it was. */
export const EVENT_WORDS: Templates = {
  purchased: 'bought',
  opened: 'opened',
  reclosed: 'closed again',
  desoldered: 'parts desoldered',
  unwound: 'transformer unwound',
  destroyed: 'destroyed',
  repaired: 'repaired',
};
