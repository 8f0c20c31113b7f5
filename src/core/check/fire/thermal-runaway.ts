import { cite } from '../../source/source.ts';
import { findCondition } from '../../working/bench/conditions-of.ts';
import type { HeadingReading } from '../../working/heat/heading-facts.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { defineCheck, type Subject } from '../define-check.ts';

interface Logged extends Subject {
  readonly heading: HeadingReading;
}

const SETTLES: LimitLine = {
  name: 'settles',
  kind: 'oneOf',
  at: null,
  words: ['settles'],
  source: cite('bench', 'a slope that grows twice in a row: thermal runaway, off at once', 'common-practice'),
  grade: 'common-practice',
};

/**
 * Does every logged temperature bend towards an end? A slope that grows fails at any load. That it settles counts for use only at the label load
 * or the worst load it sustains, with the cover closed; a log that was stopped too soon says nothing.
 */
export const thermalRunaway = defineCheck<Logged>({
  id: 'fire/thermal-runaway',
  consequence: 'injurious',
  needs: ['soakLogged'],
  subjects: ({ headings }) =>
    headings.length === 0
      ? 'notLooked'
      : headings.map((heading) => ({ id: `${heading.exhibit.id}-${heading.channel.column}`, about: heading.place.name, heading })),
  judge: (_, { heading }) => {
    const { channel, field, state, reading } = heading;
    if (channel.outcome === 'rising') return { judgement: oneOf('slopeGrows', SETTLES, false, [field]), state };
    if (channel.outcome === 'refused' || reading === null)
      return {
        judgement: undecided('notAssessed', 'notComparable', { fields: [field], notes: [{ key: 'soakDoesNotSay', args: {} }] }),
        state,
      };
    const inUse = state === 'labelLoad' || state === 'worstSustained';
    const closed = findCondition(reading.under.cover) === 'closed';
    if (inUse && closed) return { judgement: oneOf('settles', SETTLES, true, [field]), state };
    const key = closed ? (state === 'shorted' ? 'shortedNotUse' : 'lightLoad') : 'coverNotClosed';
    return { judgement: undecided('notAssessed', 'notComparable', { fields: [field], notes: [{ key, args: {} }] }), state };
  },
});
