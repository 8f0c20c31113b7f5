import { parseQuantity } from '../quantity/parse-quantity.ts';
import { isRefusal } from '../quantity/refusal.ts';
import { findCondition } from '../working/bench/conditions-of.ts';
import type { SpotReading } from '../working/heat/spot-facts.ts';
import type { Answer } from './define-check.ts';

const SETTLED_S = 30 * 60; // about one time constant of a 50 g adapter: before it a reading says little of where the heat goes; common practice

/**
 * A temperature passes only when it was read where the unit is hottest in use: at the label load or the worst load it sustains, and late
 * enough. A short has limits of its own; it never passes those of use. A failure counts at any load and any minute, since more load and more time only make it worse.
 */
export function onlyWhenSettled(reading: SpotReading, own: Answer): Answer {
  const answer = withLoad(reading, own);
  if (answer.judgement.outcome !== 'pass') return answer;
  const minutes = parseQuantity(findCondition(reading.under.minutes) ?? '', 'time');
  const early = reading.settled !== true && (isRefusal(minutes) || minutes.value < SETTLED_S);
  const used = reading.state === 'labelLoad' || reading.state === 'worstSustained';
  if (used && !early) return answer;
  const notes = [
    ...answer.judgement.notes,
    { key: reading.state === 'shorted' ? 'shortedNotUse' : used ? 'readTooEarly' : 'lightLoad', args: {} },
  ];
  return { ...answer, judgement: { ...answer.judgement, outcome: 'notAssessed', reason: 'notComparable', notes } };
}

/** A temperature that was carried to another load says so, and by which rule. */
function withLoad({ carriedFrom }: SpotReading, answer: Answer): Answer {
  if (carriedFrom === undefined) return answer;
  const { current, to, measured } = carriedFrom;
  return { ...answer, notes: [...(answer.notes ?? []), { key: measured ? 'carriedByTwoLoads' : 'carriedByRule', args: { current, to } }] };
}
