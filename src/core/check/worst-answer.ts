import { CONSEQUENCES, type Outcome } from '../result/assessment.ts';
import type { Answer } from './define-check.ts';

/** Worst first: what the line of a check, or the one finding of several readings, shows. */
const ORDER: readonly Outcome[] = ['fail', 'inconclusive', 'notAssessed', 'pass', 'notApplicable'];

/**
 * The worst of several readings of one thing: every unstruck comparable reading is judged and the worst counts; readings that contradict each
 * other leave a remark. Peaks and dips, or runs at different mains, are several things and may differ.
 */
export function worstAnswer(answers: readonly Answer[], of: 'oneThing' | 'severalThings' = 'oneThing'): Answer {
  const struck = answers.filter(({ judgement }) => judgement.reason !== 'struck');
  const counted = struck.length > 0 ? struck : answers;
  const assessed = counted.filter(({ judgement }) => judgement.outcome !== 'notAssessed');
  const [worst] = [...(assessed.length > 0 ? assessed : counted)].sort(byBadness);
  if (worst === undefined) throw new Error('there is no answer to choose from');
  return of === 'oneThing' && disagree(assessed)
    ? { ...worst, notes: [...(worst.notes ?? []), { key: 'readingsDisagree', args: { readings: assessed.length } }] }
    : worst;
}

function byBadness(a: Answer, b: Answer): number {
  const byOutcome = ORDER.indexOf(a.judgement.outcome) - ORDER.indexOf(b.judgement.outcome);
  if (byOutcome !== 0) return byOutcome;
  const rank = ({ consequence }: Answer): number => (consequence === undefined ? CONSEQUENCES.length : CONSEQUENCES.indexOf(consequence));
  if (a.judgement.outcome === 'fail' && rank(a) !== rank(b)) return rank(a) - rank(b);
  return (b.judgement.margin ?? Number.POSITIVE_INFINITY) - (a.judgement.margin ?? Number.POSITIVE_INFINITY);
}

/** Bands that do not even touch: the readings contradict each other beyond their doubt. */
function disagree(answers: readonly Answer[]): boolean {
  const bands = answers.flatMap(({ judgement }) => (judgement.marginBand === null ? [] : [judgement.marginBand]));
  return bands.some((one) => bands.some((two) => one[0] > two[1]));
}
