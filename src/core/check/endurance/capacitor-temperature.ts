import { findRead } from '../../working/bench/open-value.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import { type ComponentSpots, componentSpots } from '../../working/heat/component-spots.ts';
import { defineCheck } from '../define-check.ts';
import { judgeComponent } from '../judge-component.ts';

/** Are the electrolytic capacitors below what they are rated for? */
export const capacitorTemperature = defineCheck<ComponentSpots>({
  id: 'endurance/capacitor-temperature',
  consequence: 'disappointing',
  needs: ['spotParts'],
  subjects: ({ bench, spots }) => {
    const places = componentSpots(bench, spots, (part) => findRead(part.kind) === 'electrolyticCapacitor');
    return places.length > 0 ? places : 'notLooked';
  },
  judge: ({ setting }, { part, readings }) =>
    judgeComponent(readings, setting, {
      kind: 'electrolyticCapacitor',
      rated: ratingOf(part, 'temperature', 'temperature', 'T_r').at,
      inside: false,
    }),
});
