import type { Facts } from '../../working/facts.ts';
import { levelOfEvent, type What } from '../../working/load/event-facts.ts';
import { type IdleReading, idleReadings } from '../../working/load/idle-facts.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { type Tries, triesOf } from '../../working/load/tries-facts.ts';
import { limitLine, undecided, within } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { ENOUGH, judgeTries } from '../judge-tries.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Steady extends Subject {
  readonly of:
    | { readonly level: LevelFacts; readonly readings: readonly IdleReading[] }
    | { readonly id: string; readonly tries: Tries | null };
}

const START = { id: 'starts', about: 'starting', whats: ['start', 'plugIn'] } as const;
const OTHERS: readonly { readonly id: string; readonly about: string; readonly whats: readonly What[] }[] = [
  { id: 'steps', about: 'load steps', whats: ['step'] },
  { id: 'negotiations', about: 'negotiations', whats: ['negotiation'] },
  { id: 'returns', about: 'returns of the mains', whats: ['brownOut'] },
];
const WANDER = ['peak', 'trough', 'settled'] as const;

/** Does the output stay in its window with nothing connected, and does it come up every time? */
export const steadiness = defineCheck<Steady>({
  id: 'delivery/steadiness',
  consequence: 'disappointing',
  needs: ['idleAndStarts'],
  subjects: ({ bench, levels }) => {
    if (levels.length === 0) return 'notLooked';
    const idle = idleReadings(bench, WANDER);
    const wander = levels.flatMap((level): Steady[] => {
      const readings = idle.filter(({ event }) => levelOfEvent(bench, event) === level.id);
      const first = level.port.levels[0]?.id === level.level.id;
      return first || readings.length > 0
        ? [{ id: `${level.id}~idle`, about: `${level.about}, nothing connected`, of: { level, readings } }]
        : [];
    });
    const others = OTHERS.flatMap(({ id, about, whats }): Steady[] => {
      const tries = triesOf(bench, id, whats);
      // one capture is no series of tries; it counts when there are enough, or when one of them did not come off
      return tries !== null && (tries.made.value >= ENOUGH || tries.failed.value > 0) ? [{ id, about, of: { id, tries } }] : [];
    });
    return [...wander, { id: START.id, about: START.about, of: { id: START.id, tries: triesOf(bench, START.id, START.whats) } }, ...others];
  },
  judge: (facts, { of }) => ('level' in of ? judgeWander(of.level, of.readings, facts) : judgeTries(of.id, of.tries, facts)),
});

function judgeWander({ window }: LevelFacts, readings: readonly IdleReading[], { setting }: Facts): Answer {
  if (readings.length === 0) return { judgement: undecided('notAssessed', 'notLooked') };
  if (window === null) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noWindow', args: {} }] }) };
  const limit = limitLine('window', 'within', window.least, window.most);
  const answers = readings.map(({ opened, field, value, loaded, event }): Answer => {
    if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
    if (value === null) return { judgement: undecided('inconclusive', 'unknownValue', { fields: [field] }) };
    if (loaded)
      return { judgement: undecided('notAssessed', 'notComparable', { fields: [field], notes: [{ key: 'idleLoaded', args: {} }] }) };
    return {
      judgement: within(value, limit, setting.decision),
      notes: [{ key: 'eventReading', args: { exhibit: event.id, made: event.tries.made } }],
    };
  });
  const worst = worstAnswer(answers, 'severalThings');
  const both = (['peak', 'trough'] as const).every((name) =>
    readings.some((reading) => reading.name === name && reading.value !== null && !reading.loaded),
  );
  // where it settles says nothing about how far it wanders
  return worst.judgement.outcome === 'pass' && !both
    ? { judgement: undecided('notAssessed', 'notLooked', { notes: [{ key: 'wanderNotRead', args: {} }] }) }
    : worst;
}
