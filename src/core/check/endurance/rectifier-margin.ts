import { cite } from '../../source/source.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import { type ComponentSpots, componentSpots } from '../../working/heat/component-spots.ts';
import { isOutputRectifier, junctionOf } from '../../working/heat/junction-facts.ts';
import { scaledToHighestAmbient } from '../../working/heat/spot-facts.ts';
import { atMostRise, type LimitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { refusedSpot } from '../refused-spot.ts';
import { onlyWhenSettled } from '../settled-heat.ts';
import { worstAnswer } from '../worst-answer.ts';

/** Does the junction of the output rectifier, worked out from its leads and its loss, stay below what its sheet allows, at the highest ambient? */
export const rectifierMargin = defineCheck<ComponentSpots>({
  id: 'endurance/rectifier-margin',
  consequence: 'disappointing',
  needs: ['spotParts'],
  subjects: ({ bench, spots }) => {
    const places = componentSpots(bench, spots, (part) => isOutputRectifier(bench, part));
    return places.length > 0 ? places : 'notLooked';
  },
  judge: ({ bench, setting }, { id, part, readings }) =>
    worstAnswer(
      readings.map((reading, index): Answer => {
        const refused = refusedSpot(reading);
        if (refused !== null) return { judgement: refused };
        const rating = ratingOf(part, 'temperature', 'temperature', 'T_jm');
        if (rating.at === null) return { judgement: judgeState(rating.opened, rating.field) };
        const at = `heat/${id}/${index + 1}/junction`;
        const lead = scaledToHighestAmbient(reading, setting, `${at}/lead-at-highest-ambient`);
        const found = lead === null ? 'rectifierPackageNotKnown' : junctionOf(bench, part, reading, lead, at);
        if (typeof found === 'string')
          return { judgement: undecided('notAssessed', 'notComparable', { fields: [reading.field], notes: [{ key: found, args: {} }] }) };
        const source = cite('house', 'what is printed on the part or in its sheet', 'official-text');
        const line: LimitLine = { name: 'ratedTemperature', kind: 'atMost', at: rating.at, source, grade: 'official-text' };
        const judgement = atMostRise(found, line, setting.decision, setting.highestAmbient.value);
        const notes = [
          { key: 'scaledToHighestAmbient', args: {} },
          { key: 'junctionFromLead', args: {} },
        ];
        return onlyWhenSettled(reading, { judgement, state: reading.state, notes });
      }),
    ),
});
