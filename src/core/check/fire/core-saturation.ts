import { blockedBy, type Wound, woundOf } from '../blocked.ts';
import { atMost, limitLine } from '../decide.ts';
import { defineCheck } from '../define-check.ts';

/** Does the core stay out of saturation, hot, at the current at which the switch opens? */
export const coreSaturation = defineCheck<Wound>({
  id: 'fire/core-saturation',
  consequence: 'injurious',
  needs: ['stack'],
  subjects: ({ transformers }) => woundOf(transformers),
  judge: ({ setting }, { facts }) => {
    if (facts.flux === null) return blockedBy(facts, 'flux');
    return { judgement: atMost(facts.flux, limitLine('saturation', 'atMost', facts.core.saturates), setting.decision) };
  },
});
