import type { Chapter } from '../../core/check/bench-set.ts';
import type { Consequence, Hazard } from '../../core/result/assessment.ts';

export const HAZARD_WORDS: Readonly<Record<Hazard, string>> = {
  shock: 'Shock',
  fire: 'Fire',
  burn: 'Burn',
  harm: 'Harm to the device',
  delivery: 'Delivery',
  endurance: 'Endurance',
  interference: 'Interference',
  labelling: 'Labelling',
};

/** What a failing finding means for people, as a sentence. */
export const CONSEQUENCE_WORDS: Readonly<Record<Consequence, string>> = {
  lethal: 'This can be lethal.',
  injurious: 'This can injure.',
  damaging: 'This can damage what is connected.',
  disappointing: 'This falls short of what is promised or asked.',
  informative: 'For information; it sets no word of the verdict.',
};

/** Chapters of the examination, in bench order, with what to bring to each. */
export const CHAPTER_WORDS: Readonly<Record<Chapter, { readonly title: string; readonly bring: string }>> = {
  label: { title: 'Label and body', bring: 'the label, the box, the plug and the case' },
  cold: { title: 'Cold checks', bring: 'resistance, capacitance and insulation before power' },
  touch: { title: 'Touch', bring: 'touch current both plug ways, pins after unplugging' },
  load: { title: 'Load', bring: 'load sweeps, ripple, events, the advertised levels' },
  heat: { title: 'Heat', bring: 'soaks and spot temperatures with load and ambient' },
  board: { title: 'Board', bring: 'distances, parts and their markings' },
  transformer: { title: 'Transformer', bring: 'core, windings and every layer as it comes off' },
  circuit: { title: 'Circuit', bring: 'parts and nets as traced' },
  scope: { title: 'Scope', bring: 'captures with their operating point' },
  faults: { title: 'Single faults', bring: 'the traced circuit, one part failing at a time' },
};
