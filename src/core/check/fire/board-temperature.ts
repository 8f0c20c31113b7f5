import { openValue } from '../../working/bench/open-value.ts';
import type { SpotReading } from '../../working/heat/spot-facts.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeComponent } from '../judge-component.ts';

interface BoardPlace extends Subject {
  readonly readings: readonly SpotReading[];
  readonly laminate: string | null;
}

/** Laminates whose figure is known; the others, and one that nobody could tell, are held against the lowest and the highest of all. */
const KIND = { fr4: 'boardFr4', fr4HighCti: 'boardFr4', fr1: 'boardPaper', fr2: 'boardPaper' } as const satisfies Record<
  string,
  'boardFr4' | 'boardPaper'
>;

/** Does the printed board stay below what its laminate bears? */
export const boardTemperature = defineCheck<BoardPlace>({
  id: 'fire/board-temperature',
  consequence: 'injurious',
  needs: ['spotParts'],
  subjects: ({ spots }) => {
    const places = new Map<string, BoardPlace & { readings: SpotReading[] }>();
    for (const spot of spots) {
      const laminate = openValue<string>(spot.place.laminate);
      if (laminate.state === 'notLooked' || laminate.state === 'absent') continue;
      const { id, name } = spot.place;
      const entry = places.get(id) ?? { id, about: name, readings: [], laminate: laminate.state === 'read' ? laminate.v : null };
      entry.readings.push(spot);
      places.set(id, entry);
    }
    return places.size > 0 ? [...places.values()] : 'notLooked';
  },
  judge: ({ setting }, { readings, laminate }) =>
    judgeComponent(readings, setting, {
      kind: laminate !== null && Object.hasOwn(KIND, laminate) ? KIND[laminate as keyof typeof KIND] : 'board',
      rated: null,
      inside: false,
    }),
});
