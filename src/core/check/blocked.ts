import type { Note } from '../trace/step.ts';
import type { TransformerFacts } from '../working/transformer/transformer-facts.ts';
import { type Judgement, undecided } from './decide.ts';
import type { Subject } from './define-check.ts';

/** One transformer as a subject. */
export interface Wound extends Subject {
  readonly facts: TransformerFacts;
}

export function woundOf(transformers: readonly TransformerFacts[]): readonly Wound[] | 'notLooked' {
  if (transformers.length === 0) return 'notLooked';
  return transformers.map((facts): Wound => ({ id: facts.stack.part.id, about: facts.stack.part.ref, facts }));
}

/** Why a number is not there: what is missing for it, in words. */
export function blockedBy(facts: TransformerFacts, key: string): { judgement: Judgement; notes: Note[] } {
  const missing = facts.blocked.find((one) => one.key === key)?.missing ?? [];
  const contradicted = missing.includes('ratiosThatAgree');
  return {
    judgement: undecided(contradicted ? 'inconclusive' : 'notAssessed', contradicted ? 'contradicted' : 'notLooked'),
    notes: missing.map((what): Note => ({ key: 'numberMissing', args: { what } })),
  };
}
