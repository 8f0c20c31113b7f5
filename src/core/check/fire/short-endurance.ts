import type { Port } from '../../evidence/sample.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { ignitionSource } from '../../table/iec-62368-1/2018/ignition-source.ts';
import { powerSource } from '../../table/iec-62368-1/2018/power-source.ts';
import { getCell } from '../../table/look-up.ts';
import type { Note } from '../../trace/step.ts';
import { conditionsOf, findCondition } from '../../working/bench/conditions-of.ts';
import { openValue } from '../../working/bench/open-value.ts';
import type { Facts } from '../../working/facts.ts';
import { type Event, eventsOf, portOfEvent, readingsOf } from '../../working/load/event-facts.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

type Ordeal = Extract<Event['what'], 'short' | 'overload'>;
interface Endured extends Subject {
  readonly events: readonly Event[];
}

const BORNE = ['recovers', 'staysOff', 'dead', 'smoke'];
/** A flame is judged by a copy that was read; that no live part may be touched afterwards is from memory. Both are rules and have no ratio. */
const NO_FLAME: LimitLine = {
  name: 'afterFault',
  kind: 'oneOf',
  at: null,
  words: BORNE,
  source: cite('iec-62368-1', 'B.4.8: a flame inside goes out within 10 s', 'secondary', {
    alsoBy: ['questions and answers of a test house'],
  }),
  grade: 'secondary',
};
const NOTHING_LIVE: LimitLine = {
  ...NO_FLAME,
  source: cite('iec-62368-1', 'B.4: after a single fault no live part can be touched', 'memory'),
  grade: 'memory',
};

/**
 * Does the unit bear a shorted or overloaded output? A flame and a bared live part are judged. The temperatures that windings may reach in a
 * fault are not known to us, so what did neither is shown and never passes.
 */
export const shortEndurance = defineCheck<Endured>({
  id: 'fire/short-endurance',
  consequence: 'injurious',
  needs: ['short'],
  subjects: ({ bench }) => {
    const { ports } = bench.one;
    if (ports.length === 0) return 'notLooked';
    const at = (port: Port, what: Ordeal): Endured => ({
      id: `${port.id}~${what}`,
      about: `${port.name ?? port.id}, ${WORDS[what]}`,
      events: eventsOf(bench, [what]).filter((event) => portOfEvent(bench, event) === port),
    });
    const homeless = eventsOf(bench, ['short', 'overload']).filter((event) => portOfEvent(bench, event) === null);
    const some = homeless.length > 0 ? [{ id: 'some', about: 'an output that is not named', events: homeless }] : [];
    return [...ports.flatMap((port) => [at(port, 'short'), ...[at(port, 'overload')].filter(({ events }) => events.length > 0)]), ...some];
  },
  judge: (facts, { events }) =>
    events.length === 0 ? { judgement: undecided('notAssessed', 'notLooked') } : worstAnswer(events.map((event) => judgeOne(facts, event))),
});

const WORDS: Readonly<Record<Ordeal, string>> = { short: 'shorted', overload: 'overloaded' };

function judgeOne(facts: Facts, event: Event): Answer {
  const field = `/exhibits/${event.id}/aftermath`;
  if (event.struck !== undefined) return { judgement: undecided('notAssessed', 'struck', { fields: [field] }) };
  const [power] = readingsOf(facts.bench, event, ['inputPower'])
    .flatMap(({ value }) => (value === null ? [] : [value]))
    .toSorted((a, b) => b.value - a.value);
  const beside = power === undefined ? [] : [power.step];
  const notes: Note[] = [enduredNote(facts, event), ...(power === undefined ? [] : powerNotes(facts, event, power.value))];
  const opened = openValue<string>(event.aftermath);
  if (opened.state === 'read') {
    if (!BORNE.includes(opened.v))
      return {
        judgement: oneOf(opened.v, opened.v === 'flame' ? NO_FLAME : NOTHING_LIVE, false, [field]),
        state: event.what === 'short' ? 'shorted' : 'worstSustained',
        beside,
        notes,
      };
    return {
      judgement: undecided('notAssessed', 'limitUnknown', { measured: { word: opened.v }, fields: [field] }),
      state: event.what === 'short' ? 'shorted' : 'worstSustained',
      beside,
      notes: [...notes, { key: 'faultTemperatureUnknown', args: {} }],
    };
  }
  if (opened.state === 'notLooked')
    return {
      judgement: undecided('notAssessed', 'notLooked', power === undefined ? { fields: [field] } : { measured: power, fields: [field] }),
      beside,
      notes,
    };
  return { judgement: judgeState(opened, field), beside, notes };
}

function enduredNote({ bench }: Facts, event: Event): Note {
  const time = enduredFor(bench, event);
  return time === null ? { key: 'enduredNotStated', args: { exhibit: event.id } } : { key: 'endured', args: { exhibit: event.id, time } };
}

function enduredFor(bench: Facts['bench'], event: Event): number | null {
  const text = findCondition(conditionsOf(bench, event).minutes);
  const time = text === null ? null : parseQuantity(text, 'time');
  return time === null || isRefusal(time) ? null : time.value;
}

const IGNITES_AFTER_S = 30; // IEC 62368-1, 6.2.3.2: what a resistive ignition source is read after

/** What is drawn is the most that can reach the fault: against the power that can ignite, and the class of the output as a source. */
function powerNotes({ bench }: Facts, event: Event, watts: number): Note[] {
  const time = enduredFor(bench, event);
  const ignites = getCell(ignitionSource, 'resistive', 'power', 'load/ignition-power', 'P').value;
  const second = getCell(powerSource, 'second', 'power', 'load/power-source-second', 'P').value;
  const read = getCell(powerSource, 'second', 'after', 'load/power-source-after', 't').value;
  const notes: Note[] = [{ key: 'faultPower', args: { power: watts } }];
  if (watts <= ignites) notes.push({ key: 'faultPowerSmall', args: { line: ignites } });
  else if (time !== null && time >= IGNITES_AFTER_S) notes.push({ key: 'faultPowerIgnites', args: { line: ignites } });
  // the worst load only: a shorted output gives little, whatever it gives into a fault half way
  if (event.what === 'overload' && time !== null && time >= read) notes.push({ key: sourceClass(watts, second), args: { line: second } });
  return notes;
}

function sourceClass(watts: number, second: number): string {
  const first = getCell(powerSource, 'first', 'power', 'load/power-source-first', 'P').value;
  return watts <= first ? 'powerSourceFirst' : watts <= second ? 'powerSourceSecond' : 'powerSourceThird';
}
