import { cite } from '../source/source.ts';
import { componentTemperature as table } from '../table/iec-60950-1/2005/component-temperature.ts';
import { getCell } from '../table/look-up.ts';
import type { Derived } from '../trace/derived.ts';
import type { Note } from '../trace/step.ts';
import { type SpotReading, scaledToHighestAmbient } from '../working/heat/spot-facts.ts';
import type { SettingFacts } from '../working/setting/setting-facts.ts';
import { atMostRise, type Judgement, type LimitLine, limitLine, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';
import { refusedSpot } from './refused-spot.ts';
import { onlyWhenSettled } from './settled-heat.ts';
import { worstAnswer } from './worst-answer.ts';

type KindOfPart = (typeof table.rows)[number][0];

export interface Bears {
  readonly least: Derived;
  readonly most: Derived;
}

/** What is held against the readings at one place. */
export interface Component {
  /** A kind of part by the table of parts, or what something else bears: of its lowest and of its highest grade. */
  readonly kind: KindOfPart | Bears;
  /** The rating printed on the part or in its sheet; null when nobody read it. */
  readonly rated: Derived | null;
  /** The limit is for what lies inside: the outside is a lower bound of it, so a reading can fail and never pass. */
  readonly inside: boolean;
}

/**
 * Temperatures of one part at the highest ambient against its own rating; where that was not read, against the lowest and the highest rating
 * that ordinary parts of its kind have: below the one it passes, above the other it fails, between them nobody can tell.
 */
export function judgeComponent(readings: readonly SpotReading[], setting: SettingFacts, component: Component): Answer {
  return worstAnswer(
    readings.map((reading, index): Answer => {
      const refused = refusedSpot(reading);
      if (refused !== null) return { judgement: refused };
      const at = `heat/${reading.place.id}/${index + 1}/${component.inside ? 'inside-at-least' : 'at-highest-ambient'}`;
      const scaled = scaledToHighestAmbient(component.inside ? { ...reading, atLeast: true } : reading, setting, at);
      if (scaled === null) return { judgement: undecided('notAssessed', 'notComparable', { fields: [reading.field] }) };
      const notes: Note[] = [{ key: 'scaledToHighestAmbient', args: {} }];
      if (reading.atLeast) notes.push({ key: 'coverOpenAtLeast', args: {} });
      if (component.inside) notes.push({ key: 'insideNotKnown', args: {} });
      if (component.rated === null && !isOneFigure(bearsOf(component.kind))) notes.push({ key: 'ratingNotRead', args: {} });
      return onlyWhenSettled(reading, { judgement: compare(scaled, component, setting), state: reading.state, notes });
    }),
  );
}

/** One figure is known for the kind: a laminate. */
function isOneFigure({ least, most }: Bears): boolean {
  return least.value === most.value;
}

function bearsOf(kind: Component['kind']): Bears {
  if (typeof kind === 'object') return kind;
  const cell = (column: 'least' | 'most'): Derived => getCell(table, kind, column, `heat/component-limit/${kind}/${column}`, 'T');
  return { least: cell('least'), most: cell('most') };
}

function compare(scaled: Derived, { kind, rated }: Component, setting: SettingFacts): Judgement {
  const ambient = setting.highestAmbient.value;
  if (rated !== null) {
    const source = cite('house', 'what is printed on the part or in its sheet', 'official-text');
    const line: LimitLine = { name: 'ratedTemperature', kind: 'atMost', at: rated, source, grade: 'official-text' };
    return atMostRise(scaled, line, setting.decision, ambient);
  }
  const bears = bearsOf(kind);
  const { least, most } = bears;
  if (isOneFigure(bears)) return atMostRise(scaled, limitLine('ofItsKind', 'atMost', least), setting.decision, ambient);
  const low = atMostRise(scaled, limitLine('lowestRating', 'atMost', least), setting.decision, ambient);
  if (low.outcome === 'pass') return low;
  const line = limitLine('highestRating', 'atMost', most);
  const high = atMostRise(scaled, line, setting.decision, ambient);
  if (high.outcome === 'fail') return high;
  return {
    ...low,
    outcome: 'inconclusive',
    reason: low.outcome === 'fail' ? 'unknownValue' : low.reason,
    probability: null,
    headline: false,
    others: [line],
  };
}
