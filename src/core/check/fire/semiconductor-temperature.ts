import { findRead } from '../../working/bench/open-value.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import { type ComponentSpots, componentSpots } from '../../working/heat/component-spots.ts';
import { defineCheck } from '../define-check.ts';
import { judgeComponent } from '../judge-component.ts';

const SEMICONDUCTORS = new Set([
  'diode',
  'bridgeRectifier',
  'zener',
  'bipolarTransistor',
  'mosfet',
  'controller',
  'shuntReference',
  'negotiationChip',
]);

/** Is the silicon, which is hotter than its case, below what it bears? */
export const semiconductorTemperature = defineCheck<ComponentSpots>({
  id: 'fire/semiconductor-temperature',
  consequence: 'injurious',
  needs: ['spotParts'],
  subjects: ({ bench, spots }) => {
    const places = componentSpots(bench, spots, (part) => SEMICONDUCTORS.has(findRead(part.kind) ?? ''));
    return places.length > 0 ? places : 'notLooked';
  },
  judge: ({ setting }, { part, readings }) =>
    judgeComponent(readings, setting, { kind: 'junction', rated: ratingOf(part, 'temperature', 'temperature', 'T_r').at, inside: true }),
});
