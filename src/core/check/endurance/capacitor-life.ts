import { cite } from '../../source/source.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { findRead } from '../../working/bench/open-value.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import { capacitorLife as lifeOf } from '../../working/heat/capacitor-life.ts';
import { type ComponentSpots, componentSpots } from '../../working/heat/component-spots.ts';
import { hottestNeighbour } from '../../working/heat/hottest-neighbour.ts';
import { scaledToHighestAmbient } from '../../working/heat/spot-facts.ts';
import { atLeast, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { refusedSpot } from '../refused-spot.ts';
import { onlyWhenSettled } from '../settled-heat.ts';
import { worstAnswer } from '../worst-answer.ts';

/** Plugged in day and night for two years; a convention of this project, since no standard asks for a life. */
const LEAST_S = 2 * 8766 * 3600;

/** Is an electrolytic capacitor expected to last two years of day and night from new, at the duty and in the room of the reading? Never above its rated temperature, and never what is left of it. */
export const capacitorLife = defineCheck<ComponentSpots>({
  id: 'endurance/capacitor-life',
  consequence: 'disappointing',
  needs: ['spotParts'],
  subjects: ({ bench, spots }) => {
    const places = componentSpots(bench, spots, (part) => findRead(part.kind) === 'electrolyticCapacitor');
    return places.length > 0 ? places : 'notLooked';
  },
  judge: ({ setting, spots }, { id, part, readings }) =>
    worstAnswer(
      readings.map((reading, index): Answer => {
        const refused = refusedSpot(reading);
        if (refused !== null) return { judgement: refused };
        for (const which of ['life', 'temperature'] as const) {
          const rating = ratingOf(part, which, which === 'life' ? 'time' : 'temperature', 'X');
          if (rating.at === null) return { judgement: judgeState(rating.opened, rating.field) };
        }
        const at = `heat/${id}/${index + 1}/life`;
        const can: Derived = reading.atLeast ? { ...reading.temperature!, side: 'above' } : reading.temperature!;
        const found = lifeOf(part, can, at);
        if (found === null || can.value > found.ratedTemperature.value)
          return {
            judgement: undecided('notAssessed', 'notComparable', {
              fields: [reading.field],
              notes: [{ key: 'aboveRatedTemperature', args: {} }],
            }),
          };
        const least = given('constant', LEAST_S, 's', {
          id: 'heat/least-life',
          name: 'least-life',
          symbol: 'L',
          show: 'hours',
          source: cite('house', 'two years of day and night, from new', 'common-practice'),
        });
        const judgement = atLeast(found.life, limitLine('leastLife', 'atLeast', least), setting.decision);
        const hottest = scaledToHighestAmbient(reading, setting, `${at}/can-at-highest-ambient`);
        const worst =
          hottest === null || hottest.value > found.ratedTemperature.value ? null : lifeOf(part, hottest, `${at}/at-highest-ambient`);
        const neighbour = hottestNeighbour(reading, spots);
        return onlyWhenSettled(reading, {
          judgement,
          state: reading.state,
          show: 'hours',
          beside: worst === null ? [] : [worst.life.step],
          notes: [
            { key: 'lifeFromNew', args: {} },
            ...(neighbour === null ? [] : [{ key: 'heatedBy', args: { ...neighbour } }]),
            worst === null
              ? { key: 'aboveRatedAtHighest', args: {} }
              : { key: 'lifeAtHighest', args: { hours: Math.round(worst.life.value / 3600) } },
          ],
        });
      }),
    ),
});
