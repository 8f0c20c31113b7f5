import { cite } from '../source/source.ts';
import { given } from '../trace/derived.ts';
import type { Facts } from '../working/facts.ts';
import { type EventReading, eventsOf, portOfEvent, readingsOf } from '../working/load/event-facts.ts';
import { otherLoads } from '../working/load/other-loads.ts';
import { atMost, type LimitLine, limitLine, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';
import { judgeState } from './judge-state.ts';
import { worstAnswer } from './worst-answer.ts';

const LONGEST_S = 1; // a drop-out longer than this is an interruption; common practice

/** How long one port drops out while a device is put on another. */
export function judgeDropout({ bench, setting }: Facts, port: string): Answer {
  const readings = eventsOf(bench, ['negotiation', 'plugIn'])
    .filter((event) => portOfEvent(bench, event)?.id === port && otherLoads(bench, event, port).length > 0)
    .flatMap((event) => readingsOf(bench, event, ['seconds']));
  if (readings.length === 0) return { judgement: undecided('notAssessed', 'notLooked') };
  return worstAnswer(
    readings.map(({ opened, field, value, event }: EventReading): Answer => {
      if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
      if (value === null) return { judgement: undecided('inconclusive', 'unknownValue', { fields: [field] }) };
      return {
        judgement: atMost(value, interruption(), setting.decision),
        notes: [{ key: 'eventReading', args: { exhibit: event.id, made: event.tries.made } }],
      };
    }),
  );
}

function interruption(): LimitLine {
  const source = cite('house', 'longer than a second a device takes it for unplugging', 'common-practice');
  return limitLine(
    'interruption',
    'atMost',
    given('constant', LONGEST_S, 's', { id: 'load/longest-dropout', name: 'longestDropout', symbol: 't', source }),
  );
}
