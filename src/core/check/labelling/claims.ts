import { cite } from '../../source/source.ts';
import { rating } from '../../table/en-50075/1990/rating.ts';
import { getCell } from '../../table/look-up.ts';
import { given } from '../../trace/derived.ts';
import type { Facts } from '../../working/facts.ts';
import { classAndPlug, densityOf, inputOfFlatPlug } from '../../working/label/mark-facts.ts';
import { type Promised, promises } from '../../working/label/promise-facts.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { atLeast, atMost, type LimitLine, limitLine, oneOf, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { heldLine } from '../held-line.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Claim extends Subject {
  readonly answer: (facts: Facts) => Answer;
}

const DENSEST = 3; // W/cm³; the densest adapters that are sold stay below 2; common practice

const possibleClass: LimitLine = {
  name: 'classOfPlug',
  kind: 'oneOf',
  at: null,
  words: ['possible'],
  source: cite('iec-61140', 'class III is not fed from the mains; class I needs a protective conductor', 'memory'),
  grade: 'memory',
};

/** Do box and listing promise no more than the label and than was held, and can the marks be true? */
export const claims = defineCheck<Claim>({
  id: 'labelling/claims',
  consequence: 'disappointing',
  needs: ['label'],
  subjects: ({ bench, levels }) => {
    const promised = promises(bench);
    const found: Claim[] = promised.map((one) => ({
      id: one.id,
      about: one.about,
      answer: ({ setting }) => judgePromise(one, levels, setting.decision),
    }));
    const marks = markClaims(bench, promised);
    return found.length + marks.length > 0 ? [...found, ...marks] : 'notLooked';
  },
  judge: (facts, claim) => claim.answer(facts),
});

function judgePromise(one: Promised, levels: readonly LevelFacts[], rule: Parameters<typeof atMost>[2]): Answer {
  const answers: Answer[] = [];
  const fields = [one.field];
  if (one.from !== 'label' && one.onLabel !== null) {
    const limit = limitLine('onTheLabelToo', 'atMost', one.onLabel);
    answers.push({ judgement: atMost(one.least, limit, rule), notes: [{ key: 'promisedBy', args: { from: one.from } }] });
  }
  const held = one.of === 'current' ? heldFor(one, levels, rule) : null;
  if (held !== null) answers.push(held);
  if (answers.length > 0) return worstAnswer(answers);
  if (one.port === null)
    return { judgement: undecided('notAssessed', 'limitUnknown', { fields, notes: [{ key: 'promiseOfNoOutput', args: {} }] }) };
  // volts times amperes that the sweeps held are judged as power; a label promise of power is not compared with itself
  if (one.from === 'label') return { judgement: undecided('notAssessed', 'notLooked', { fields }) };
  return { judgement: undecided('notAssessed', 'limitUnknown', { fields, notes: [{ key: 'labelSilent', args: {} }] }) };
}

/** A promised current is kept when one of the levels of its output holds it; each level counts with the worst of its runs. */
function heldFor(one: Promised, levels: readonly LevelFacts[], rule: Parameters<typeof atMost>[2]): Answer | null {
  const each = levels.flatMap((level): Answer[] => {
    const { window } = level;
    if (level.port.id !== one.port?.id || window === null) return [];
    const runs = level.nearest.flatMap(({ held }): Answer[] =>
      held === null ? [] : [{ judgement: atLeast(held, heldLine('claim', one.printed, window), rule) }],
    );
    return runs.length === 0 ? [] : [worstAnswer(runs)];
  });
  const best = (answer: Answer): number => ['pass', 'inconclusive', 'fail'].indexOf(answer.judgement.outcome);
  return (
    each.toSorted(
      (a, b) => best(a) - best(b) || (a.judgement.margin ?? Number.POSITIVE_INFINITY) - (b.judgement.margin ?? Number.POSITIVE_INFINITY),
    )[0] ?? null
  );
}

/** Marks that cannot be true inform; they set no word. */
function markClaims(bench: Facts['bench'], promised: readonly Promised[]): Claim[] {
  const found: Claim[] = [];
  const informs = { consequence: 'informative' } as const;
  const protection = classAndPlug(bench);
  if (protection !== null) {
    const { word, fields } = protection;
    found.push({
      id: 'class-of-plug',
      about: 'class of protection and plug',
      answer: () => ({ judgement: { ...oneOf(word, possibleClass, word === 'possible', fields), headline: false }, ...informs }),
    });
  }
  const input = inputOfFlatPlug(bench);
  if (input !== null) {
    const limit = limitLine('ratingOfPlug', 'atMost', getCell(rating, 'flatTwoPin', 'current', 'label/plug-rating', 'I'));
    found.push({
      id: 'rating-of-plug',
      about: 'input current and plug',
      answer: ({ setting }) => ({ judgement: atMost(input, limit, setting.decision), ...informs }),
    });
  }
  const density = densityOf(bench, promised);
  if (density !== null) {
    const source = cite('bench', 'the densest adapters that are sold stay below 2 W in each cubic centimetre', 'common-practice');
    const limit = limitLine(
      'densest',
      'atMost',
      given('constant', DENSEST, '1', { id: 'label/densest', name: 'densest', symbol: 'p', source }),
    );
    found.push({
      id: 'watts-in-the-case',
      about: 'power claimed and size of the case',
      answer: ({ setting }) => ({ judgement: atMost(density, limit, setting.decision), ...informs }),
    });
  }
  return found;
}
