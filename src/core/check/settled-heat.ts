import { parseQuantity } from '../quantity/parse-quantity.ts';
import { isRefusal } from '../quantity/refusal.ts';
import { findCondition } from '../working/bench/conditions-of.ts';
import type { SpotReading } from '../working/heat/spot-facts.ts';
import type { Answer } from './define-check.ts';

const SETTLED_S = 30 * 60; // about one time constant of a 50 g adapter: before it a reading says little of where the heat goes; common practice

/**
 * A temperature passes only when it was read where the unit is hottest: at the label load, the worst load it sustains or shorted, and late
 * enough. A failure counts at any load and any minute, since more load and more time only make it worse.
 */
export function onlyWhenSettled(reading: SpotReading, answer: Answer): Answer {
  if (answer.judgement.outcome !== 'pass') return answer;
  const minutes = parseQuantity(findCondition(reading.under.minutes) ?? '', 'time');
  const early = isRefusal(minutes) || minutes.value < SETTLED_S;
  if (reading.state !== 'tested' && !early) return answer;
  const notes = [...answer.judgement.notes, { key: reading.state === 'tested' ? 'lightLoad' : 'readTooEarly', args: {} }];
  return { ...answer, judgement: { ...answer.judgement, outcome: 'notAssessed', reason: 'notComparable', notes } };
}
