import { touchTemperature as olderTouch } from '../../table/iec-60950-1/2005/touch-temperature.ts';
import { touchTemperature } from '../../table/iec-62368-1/2018/touch-temperature.ts';
import { findCell } from '../../table/look-up.ts';
import { openValue } from '../../working/bench/open-value.ts';
import type { SpotReading } from '../../working/heat/spot-facts.ts';
import { atMostRise, type Judgement, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { refusedSpot } from '../refused-spot.ts';
import { onlyWhenSettled } from '../settled-heat.ts';
import { worstAnswer } from '../worst-answer.ts';

interface OutsidePlace extends Subject {
  readonly readings: readonly SpotReading[];
}

/** The table holds for readings near this ambient and asks not to scale them. */
const TABLE_AMBIENT_K = 298.15;
const NEAR_K = 5; // how far from it a room may be and the reading still count as read; house choice

/** Is what a hand touches below the limit for its material and contact time, as read? */
export const enclosureTemperature = defineCheck<OutsidePlace>({
  id: 'burn/enclosure-temperature',
  consequence: 'injurious',
  needs: ['spotOutside'],
  subjects: ({ spots }) => {
    const places = new Map<string, SpotReading[]>();
    for (const spot of spots) if (spot.place.outside === true) places.set(spot.place.id, [...(places.get(spot.place.id) ?? []), spot]);
    return places.size === 0 ? 'notLooked' : [...places].map(([id, readings]) => ({ id, about: readings[0]!.place.name, readings }));
  },
  judge: (facts, { readings }) =>
    worstAnswer(
      readings.map((reading): Answer => {
        const outside = notFit(reading);
        if (outside !== null) return { judgement: outside };
        const material = openValue<string>(reading.place.material);
        if (material.state !== 'read') return { judgement: judgeState(material, `/places/${reading.place.id}/material`) };
        const contact = facts.setting.contact.word;
        const at = findCell(touchTemperature, contact, material.v, `heat/touch-limit/${contact}-${material.v}`, 'T');
        if (at === null) return { judgement: undecided('notAssessed', 'limitUnknown') };
        const judgement = atMostRise(
          reading.temperature!,
          limitLine('touch', 'atMost', at),
          facts.setting.decision,
          reading.ambient!.value,
        );
        const older = findCell(olderTouch, material.v, 'most', `heat/older-touch-limit/${material.v}`, 'T');
        const others = older === null ? [] : [limitLine('olderTouch', 'atMost', older)];
        return onlyWhenSettled(reading, {
          judgement: { ...judgement, others },
          state: reading.state,
          notes: [
            { key: 'asRead', args: {} },
            { key: 'contactTime', args: { contact } },
          ],
        });
      }),
    ),
});

function notFit(reading: SpotReading): Judgement | null {
  const refused = refusedSpot(reading);
  if (refused !== null) return refused;
  if (reading.under.cover !== 'closed')
    return undecided('notAssessed', 'notComparable', { fields: [reading.field], notes: [{ key: 'coverNotClosed', args: {} }] });
  const ambient = reading.ambient!.value;
  if (Math.abs(ambient - TABLE_AMBIENT_K) > NEAR_K)
    return undecided('notAssessed', 'notComparable', {
      fields: [reading.field],
      notes: [{ key: 'ambientTooFar', args: { ambientC: ambient - 273.15 } }],
    });
  return null;
}
