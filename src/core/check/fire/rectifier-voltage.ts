import { blockedBy, type Wound, woundOf } from '../blocked.ts';
import { undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { judgeRating } from '../judge-rating.ts';

/** Does the output rectifier stay within its rating while the switch is on, at the highest mains? */
export const rectifierVoltage = defineCheck<Wound>({
  id: 'fire/rectifier-voltage',
  consequence: 'injurious',
  needs: ['stack'],
  subjects: ({ transformers }) => woundOf(transformers),
  judge: ({ bench, setting }, { facts }) => {
    const { reverse, stack } = facts;
    if (reverse === null) return blockedBy(facts, 'reverse');
    const part = stack.exhibit.rectifierPart === undefined ? undefined : bench.parts.get(stack.exhibit.rectifierPart);
    if (part === undefined)
      return {
        judgement: undecided('notAssessed', 'notLooked', { measured: reverse }),
        notes: [{ key: 'numberMissing', args: { what: 'rectifierPart' } }],
      };
    return judgeRating(part, reverse, null, setting.decision);
  },
});
