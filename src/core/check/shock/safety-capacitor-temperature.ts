import { findRead } from '../../working/bench/open-value.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import { type ComponentSpots, componentSpots } from '../../working/heat/component-spots.ts';
import { defineCheck } from '../define-check.ts';
import { judgeComponent } from '../judge-component.ts';

const ACROSS_INSULATION = new Set(['Y1', 'Y2', 'Y3', 'Y4']);

/** Are the capacitors that keep the mains away below what they bear? */
export const safetyCapacitorTemperature = defineCheck<ComponentSpots>({
  id: 'shock/safety-capacitor-temperature',
  consequence: 'injurious',
  needs: ['spotParts'],
  subjects: ({ bench, spots }) => {
    const places = componentSpots(bench, spots, (part) => ACROSS_INSULATION.has(findRead(part.safetyClass) ?? ''));
    return places.length > 0 ? places : 'notLooked';
  },
  judge: ({ setting }, { part, readings }) =>
    judgeComponent(readings, setting, { kind: 'yCapacitor', rated: ratingOf(part, 'temperature', 'temperature', 'T_r').at, inside: false }),
});
