import { blockedBy, type Wound, woundOf } from '../blocked.ts';
import { undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { judgeRating } from '../judge-rating.ts';

/** Does the switch stay within its rating at the highest mains, with what the transformer reflects and the clamp lets through? */
export const switchVoltage = defineCheck<Wound>({
  id: 'fire/switch-voltage',
  consequence: 'injurious',
  needs: ['stack'],
  subjects: ({ transformers }) => woundOf(transformers),
  judge: ({ bench, setting }, { facts }) => {
    const { plateau, switchPeak, stack } = facts;
    if (plateau === null) return blockedBy(facts, 'plateau');
    const part = stack.exhibit.switchPart === undefined ? undefined : bench.parts.get(stack.exhibit.switchPart);
    if (part === undefined)
      return {
        judgement: undecided('notAssessed', 'notLooked', { measured: plateau }),
        notes: [{ key: 'numberMissing', args: { what: 'switchPart' } }],
      };
    return { ...judgeRating(part, plateau, switchPeak, setting.decision), beside: switchPeak === null ? [] : [plateau.step] };
  },
});
