import type { Consequence } from '../../result/assessment.ts';
import { cite, type Source } from '../../source/source.ts';
import { type EnclosureQuestion, enclosureQuestions } from '../../working/label/enclosure-facts.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Rule {
  readonly name: string;
  readonly sound: string;
  readonly broken: string;
  readonly consequence: Consequence;
  readonly source: Source;
}

const RULES: Readonly<Record<EnclosureQuestion['id'], Rule>> = {
  'live-part': {
    name: 'outOfReach',
    sound: 'outOfReach',
    broken: 'withinReach',
    consequence: 'lethal',
    source: cite('iec-62368-1', 'clause 5.3.2, accessibility of parts at hazardous voltage', 'memory'),
  },
  drop: {
    name: 'staysShut',
    sound: 'staysShut',
    broken: 'opened',
    consequence: 'injurious',
    source: cite('iec-62368-1', 'annex T.7, three drops from 1 m', 'memory'),
  },
  seam: {
    name: 'staysShut',
    sound: 'staysShut',
    broken: 'opened',
    consequence: 'injurious',
    source: cite('iec-62368-1', 'annex T and clause 4.4, an enclosure that is a safeguard stays in place', 'memory'),
  },
  wires: {
    name: 'wiresHeld',
    sound: 'heldTwice',
    broken: 'bySolderOnly',
    consequence: 'injurious',
    source: cite('iec-62368-1', 'clause 4.6, conductors held by more than one fixing', 'memory'),
  },
};

/** Do the case and the fixing of its wires keep live parts away from fingers, also after it fell and with one joint loose? */
export const enclosure = defineCheck<EnclosureQuestion>({
  id: 'shock/enclosure',
  consequence: 'lethal',
  needs: ['enclosure'],
  subjects: ({ bench }) => {
    const questions = enclosureQuestions(bench);
    return questions.some(({ seen }) => seen.length > 0) ? questions : 'notLooked';
  },
  judge: (_facts, { id, seen }) => {
    const rule = RULES[id];
    if (seen.length === 0) return { judgement: undecided('notAssessed', 'notLooked'), consequence: rule.consequence };
    return worstAnswer(seen.map((one) => judgeSeen(rule, one)));
  },
});

function judgeSeen(rule: Rule, { field, opened, short }: EnclosureQuestion['seen'][number]): Answer {
  const { consequence } = rule;
  if (opened.state !== 'read') return { judgement: judgeState(opened, field), consequence };
  // too easy to pass on, or too hard to fail on: what was seen is kept and does not count
  if (short !== undefined)
    return { judgement: undecided('notAssessed', 'notComparable', { fields: [field], notes: [{ key: short, args: {} }] }), consequence };
  const limit: LimitLine = { name: rule.name, kind: 'oneOf', at: null, words: [rule.sound], source: rule.source, grade: rule.source.grade };
  return { judgement: oneOf(opened.v ? rule.sound : rule.broken, limit, opened.v, [field]), consequence };
}
