import { findRead } from '../../working/bench/open-value.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import { type ComponentSpots, componentSpots } from '../../working/heat/component-spots.ts';
import { defineCheck } from '../define-check.ts';
import { judgeComponent } from '../judge-component.ts';

/** Is the optocoupler, whose insulation ages with heat, below what it bears? */
export const optocouplerTemperature = defineCheck<ComponentSpots>({
  id: 'shock/optocoupler-temperature',
  consequence: 'injurious',
  needs: ['spotParts'],
  subjects: ({ bench, spots }) => {
    const places = componentSpots(bench, spots, (part) => findRead(part.kind) === 'optocoupler');
    return places.length > 0 ? places : 'notLooked';
  },
  judge: ({ setting }, { part, readings }) =>
    judgeComponent(readings, setting, {
      kind: 'optocoupler',
      rated: ratingOf(part, 'temperature', 'temperature', 'T_r').at,
      inside: false,
    }),
});
