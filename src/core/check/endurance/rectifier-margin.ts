import { cite } from '../../source/source.ts';
import type { Derived } from '../../trace/derived.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import type { Facts } from '../../working/facts.ts';
import { type ComponentSpots, componentSpots } from '../../working/heat/component-spots.ts';
import { isOutputRectifier, type Junction, junctionOf } from '../../working/heat/junction-facts.ts';
import { rectifierLosses, runawayOf } from '../../working/heat/runaway-facts.ts';
import { type SpotReading, scaledToHighestAmbient } from '../../working/heat/spot-facts.ts';
import { atMostRise, type Judgement, type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { refusedSpot } from '../refused-spot.ts';
import { onlyWhenSettled } from '../settled-heat.ts';
import { worstAnswer } from '../worst-answer.ts';

/**
 * Does the junction of the output rectifier, worked out from its leads and its loss, stay below what its sheet allows, at the highest ambient; and
 * where its type is known, below where its own leakage would make it run away?
 */
export const rectifierMargin = defineCheck<ComponentSpots>({
  id: 'endurance/rectifier-margin',
  consequence: 'disappointing',
  needs: ['spotParts'],
  subjects: ({ bench, spots }) => {
    const places = componentSpots(bench, spots, (part) => isOutputRectifier(bench, part));
    return places.length > 0 ? places : 'notLooked';
  },
  judge: (facts, place) =>
    worstAnswer(
      place.readings.flatMap((reading, index) => judgeReading(facts, place, reading, `heat/${place.id}/${index + 1}/junction`)),
      'severalThings',
    ),
});

function judgeReading({ bench, setting, transformers }: Facts, { part }: ComponentSpots, reading: SpotReading, at: string): Answer[] {
  const refused = refusedSpot(reading);
  if (refused !== null) return [{ judgement: refused }];
  const rating = ratingOf(part, 'temperature', 'temperature', 'T_jm');
  if (rating.at === null) return [{ judgement: judgeState(rating.opened, rating.field) }];
  const lead = scaledToHighestAmbient(reading, setting, `${at}/lead-at-highest-ambient`);
  const found = lead === null ? 'rectifierPackageNotKnown' : junctionOf(bench, part, reading, lead, at);
  if (typeof found === 'string')
    return [{ judgement: undecided('notAssessed', 'notComparable', { fields: [reading.field], notes: [{ key: found, args: {} }] }) }];
  const source = cite('house', 'what is printed on the part or in its sheet', 'official-text');
  const line: LimitLine = { name: 'ratedTemperature', kind: 'atMost', at: rating.at, source, grade: 'official-text' };
  const against = (limit: LimitLine): Judgement => atMostRise(found.at, limit, setting.decision, setting.highestAmbient.value);
  const reverse = transformers.find((one) => one.reverse !== null)?.reverse ?? null;
  const runaway = reverse === null ? null : runawayOf(part, reverse, `${at}/runaway`);
  const answers = [against(line), ...(runaway === null ? [] : [cautious(against(limitLine('runaway', 'atMost', runaway)))])];
  return answers.map((judgement) => onlyWhenSettled(reading, { judgement, state: reading.state, ...besides(found, runaway, at) }));
}

/** The sheet gives the greatest leakage of its type: below where that one runs away is safe, above it this one may still be. */
function cautious(judgement: Judgement): Judgement {
  if (judgement.outcome !== 'fail') return judgement;
  const notes = [...judgement.notes, { key: 'leakageIsAtMost', args: {} }];
  return { ...judgement, outcome: 'inconclusive', reason: 'oneSided', probability: null, headline: false, notes };
}

function besides({ forward, current }: Junction, runaway: Derived | null, at: string): Pick<Answer, 'beside' | 'notes'> {
  const { now, switched } = rectifierLosses(forward, current, at);
  return {
    beside: [now.step, switched.step, ...(runaway === null ? [] : [runaway.step])],
    notes: [
      { key: 'scaledToHighestAmbient', args: {} },
      { key: 'junctionFromLead', args: {} },
      { key: runaway === null ? 'runawayNotKnown' : 'runawayAt', args: runaway === null ? {} : { temperature: runaway.value } },
      { key: 'switchedInstead', args: { now: now.value, switched: switched.value } },
    ],
  };
}
