import { findCell } from '../../table/look-up.ts';
import { materialTemperature as table } from '../../table/plastics-makers/2026/material-temperature.ts';
import type { Derived } from '../../trace/derived.ts';
import { openValue } from '../../working/bench/open-value.ts';
import { bearsOf } from '../../working/heat/place-bears.ts';
import type { SpotReading } from '../../working/heat/spot-facts.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeComponent } from '../judge-component.ts';

interface MaterialPlace extends Subject {
  readonly readings: readonly SpotReading[];
  /** The row of the table: what it is, or any of them where nobody could tell. */
  readonly substance: string;
  readonly bears: Derived | null;
}

/** Do the plastic, the tape, the sleeve or the wire near what is hot stay below what they bear for long? */
export const materialTemperature = defineCheck<MaterialPlace>({
  id: 'fire/material-temperature',
  consequence: 'injurious',
  needs: ['spotMaterial'],
  subjects: ({ spots }) => {
    const places = new Map<string, MaterialPlace & { readings: SpotReading[] }>();
    for (const spot of spots) {
      const { id, name, substance } = spot.place;
      const what = openValue<string>(substance);
      const bears = bearsOf(spot.place);
      if (bears === null && (what.state === 'notLooked' || what.state === 'absent')) continue;
      const entry = places.get(id) ?? { id, about: name, readings: [], substance: what.state === 'read' ? what.v : 'any', bears };
      entry.readings.push(spot);
      places.set(id, entry);
    }
    return places.size > 0 ? [...places.values()] : 'notLooked';
  },
  judge: ({ setting }, { readings, substance, bears }) => {
    const cell = (column: 'least' | 'most'): Derived =>
      findCell(table, substance, column, `heat/material-limit/${substance}/${column}`, 'T') ??
      findCell(table, 'any', column, `heat/material-limit/any/${column}`, 'T')!;
    return judgeComponent(readings, setting, { kind: { least: cell('least'), most: cell('most') }, rated: bears, inside: false });
  },
});
