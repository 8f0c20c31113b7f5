import type { Templates } from './fill-template.ts';

/** Contributions to an uncertainty, as a line of a budget. */
export const LEAVES: Templates = {
  gain: 'percent of reading, {instrument}',
  offset: 'fixed part, {instrument}',
  declaredTogether: 'reading, correlated with another as declared',
  digits: 'digits, {instrument}',
  resolution: 'last digit shown',
  stated: 'spread as stated',
  notStated: 'nothing is stated',
  method: 'method of measuring ({method|word})',
  betweenRows: 'what the curve does between two rows',
  emissivity: 'emissivity',
  rippleHeating: 'heat of a ripple that nobody measured',
  canRatio: 'heat of the core over that of the can',
  forwardVoltage: 'voltage across a rectifier of a kind that nobody stated',
  cameraBand: 'band of wavelengths that the camera sees',
  ambientFactor: 'rise per degree of ambient',
  estimatedWorkingVoltage: 'estimate of the working voltage',
  tolerance: 'tolerance of a part',
  lineResistance: 'estimate of the resistance of the mains',
  markedTolerance: 'tolerance of {part}',
  fit: 'fit of {readings} logged readings',
  roomMoved: 'room that moved during the log',
  estimate: 'estimate of what nobody measured',
  rest: '{leaves} smaller ones together',
};
