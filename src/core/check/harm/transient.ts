import { type EventReading, eventsOf, levelOfEvent, readingsOf, type What } from '../../working/load/event-facts.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { type TransientLimits, transientLimits } from '../../working/load/transient-limits.ts';
import { atLeast, atMost, type DecisionRule, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Moment extends Subject {
  readonly level: LevelFacts;
  readonly what: What;
}

/** What a device meets at every socket, and where the first level is what it meets first. */
const FIRST_LEVEL: readonly What[] = ['plugIn', 'unplug', 'start', 'step'];
const OTHER_LEVELS: readonly What[] = ['step'];
const ALSO: readonly What[] = ['brownOut'];
const NAMES = ['peak', 'trough', 'settled'] as const;

/** Do the peaks and dips at plugging in, unplugging, starting and load steps stay inside what a device stands for a moment? */
export const transient = defineCheck<Moment>({
  id: 'harm/transient',
  consequence: 'damaging',
  needs: ['transient'],
  subjects: ({ bench, levels }) => {
    if (levels.length === 0) return 'notLooked';
    return levels.flatMap((level) => {
      const expected = level.port.levels[0]?.id === level.level.id ? FIRST_LEVEL : OTHER_LEVELS;
      const seen = eventsOf(bench, [...FIRST_LEVEL, ...ALSO])
        .filter((event) => levelOfEvent(bench, event) === level.id)
        .map(({ what }) => what);
      return [...new Set([...expected, ...seen])]
        .sort()
        .map((what): Moment => ({ id: `${level.id}~${what.toLowerCase()}`, about: `${level.about}, ${WORDS[what]}`, level, what }));
    });
  },
  judge: ({ bench, setting }, { level, what }) => {
    const readings = eventsOf(bench, [what])
      .filter((event) => levelOfEvent(bench, event) === level.id)
      .flatMap((event) => readingsOf(bench, event, NAMES))
      .filter(({ name }) => name !== 'trough' || what === 'step'); // the voltage comes from nothing, or goes there, in all the others
    const limits = transientLimits(level);
    if (limits === null) {
      const [highest] = readings.flatMap(({ value }) => (value === null ? [] : [value])).sort((a, b) => b.value - a.value);
      return { judgement: undecided('notAssessed', 'limitUnknown', highest === undefined ? {} : { measured: highest }) };
    }
    if (readings.length === 0) return { judgement: undecided('notAssessed', 'notLooked') };
    const answers = readings.map((reading) => judgeOne(reading, limits, setting.decision));
    const worst = worstAnswer(answers, 'severalThings');
    const looked = readings.some(({ name, opened }) => name === 'peak' && opened.state === 'read');
    // a dip or an end value alone says nothing about the peak
    return worst.judgement.outcome === 'pass' && !looked
      ? { judgement: undecided('notAssessed', 'notLooked', { notes: [{ key: 'noPeak', args: {} }] }) }
      : worst;
  },
});

const WORDS: Readonly<Record<What, string>> = {
  plugIn: 'plugging in',
  unplug: 'unplugging',
  start: 'starting',
  step: 'load step',
  brownOut: 'mains gives way',
  negotiation: 'negotiation',
  short: 'short',
  overload: 'overload',
  idle: 'idle',
};

function judgeOne({ name, value, opened, field, event }: EventReading, limits: TransientLimits, rule: DecisionRule): Answer {
  if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
  if (value === null) return { judgement: undecided('inconclusive', 'unknownValue', { fields: [field] }) };
  const notes = [{ key: 'eventReading', args: { exhibit: event.id, made: event.tries.made } }];
  if (name === 'settled') return { judgement: atMost(value, limitLine('deviceStands', 'atMost', limits.steady), rule), notes };
  if (name === 'peak') return { judgement: atMost(value, limitLine('overshoot', 'atMost', limits.most), rule), notes };
  // a dip lets the device stop; it does not break it
  return { judgement: atLeast(value, limitLine('undershoot', 'atLeast', limits.least), rule), notes, consequence: 'disappointing' };
}
