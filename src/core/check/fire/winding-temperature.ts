import { windingTemperature as table } from '../../table/iec-62368-1/2018/winding-temperature.ts';
import { getCell } from '../../table/look-up.ts';
import { findRead, openValue } from '../../working/bench/open-value.ts';
import { type SpotReading, scaledToHighestAmbient } from '../../working/heat/spot-facts.ts';
import { atMostRise, limitLine } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { refusedSpot } from '../refused-spot.ts';
import { onlyWhenSettled } from '../settled-heat.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Winding extends Subject {
  readonly readings: readonly SpotReading[];
}

/** Is the transformer, at the highest ambient, below what its class of insulation stands? */
export const windingTemperature = defineCheck<Winding>({
  id: 'fire/winding-temperature',
  consequence: 'injurious',
  needs: ['spotWinding'],
  subjects: ({ bench, spots }) => {
    const places = new Map<string, SpotReading[]>();
    for (const spot of spots) {
      const part = spot.place.part === undefined ? undefined : bench.parts.get(spot.place.part);
      if (findRead(part?.kind) === 'transformer') places.set(spot.place.id, [...(places.get(spot.place.id) ?? []), spot]);
    }
    return places.size === 0 ? 'notLooked' : [...places].map(([id, readings]) => ({ id, about: readings[0]!.place.name, readings }));
  },
  judge: (facts, { readings }) =>
    worstAnswer(
      readings.map((reading, index): Answer => {
        const refused = refusedSpot(reading);
        if (refused !== null) return { judgement: refused };
        const insulation = openValue(reading.place.windingClass);
        if (insulation.state !== 'read') return { judgement: judgeState(insulation, `/places/${reading.place.id}/windingClass`) };
        const { setting } = facts;
        const scaled = scaledToHighestAmbient(reading, setting, `heat/${reading.place.id}/${index + 1}/at-highest-ambient`);
        if (scaled === null) return { judgement: judgeState(reading.opened, reading.field) };
        const how = reading.byResistance === true ? 'resistance' : 'thermocouple';
        const at = getCell(
          table,
          insulation.v,
          how,
          `heat/winding-limit/${insulation.v}${how === 'resistance' ? '/by-resistance' : ''}`,
          'T',
        );
        const judgement = atMostRise(scaled, limitLine('windingClass', 'atMost', at), setting.decision, setting.highestAmbient.value);
        const notes = [{ key: 'scaledToHighestAmbient', args: {} }, ...(reading.atLeast ? [{ key: 'coverOpenAtLeast', args: {} }] : [])];
        return onlyWhenSettled(reading, { judgement, state: reading.state, notes });
      }),
    ),
});
