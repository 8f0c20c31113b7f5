import type { Curve, Finding, Step } from '../../core/result/assessment.ts';
import { sentenceFor, type Templates } from './fill-template.ts';

/** At which load or state a finding holds. */
export const STATE_WORDS: Readonly<Record<NonNullable<Finding['state']>, string>> = {
  tested: 'as tested',
  labelLoad: 'at the label load',
  worstSustained: 'at the worst load it sustains',
  shorted: 'with the output shorted',
};

export const STEP_KIND_WORDS: Readonly<Record<Step['kind'], string>> = {
  reading: 'reading',
  typed: 'as typed',
  constant: 'constant',
  lookUp: 'looked up',
  formula: 'worked out',
  choice: 'choice',
  reduce: 'taken from several',
};

export const SENSE_WORDS: Readonly<Record<Curve['sense'], string>> = {
  socket: 'measured at the socket',
  cableEnd: 'measured at the end of the cable',
};
export const ORDER_WORDS: Readonly<Record<Curve['order'], string>> = { up: 'load rising', down: 'load falling' };

export const EXHIBIT_KINDS: Templates = {
  label: 'label',
  body: 'case and plug',
  cold: 'cold reading',
  touch: 'touch reading',
  advertised: 'advertised levels',
  sweep: 'load sweep',
  ripple: 'ripple',
  event: 'event',
  spots: 'spot temperatures',
  soak: 'logged soak',
  thermalPicture: 'thermal picture',
  distance: 'distance',
  board: 'board',
  photo: 'photograph',
  stack: 'winding stack',
  capture: 'capture',
  workingVoltage: 'working voltage',
  residual: 'voltage left',
  earthSwing: 'swing against earth',
};

/** How a sweep ended, as the word in the case or in the Assessment says. */
export const SWEEP_ENDS: Templates = {
  window: 'it leaves the window there',
  lastPoint: 'the sweep ends there, still inside the window',
  shutdown: 'it switches off beyond',
  neverInside: 'it is never inside the window',
};

export function exhibitKindText(kind: string): string {
  return sentenceFor(EXHIBIT_KINDS, kind);
}
