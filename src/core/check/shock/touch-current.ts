import { touchCurrent as olderLines } from '../../table/iec-60950-1/2005/touch-current.ts';
import { touchCurrent as limits } from '../../table/iec-62368-1/2018/touch-current.ts';
import { getCell } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import { uncertaintyOf } from '../../trace/leaf.ts';
import type { Note } from '../../trace/step.ts';
import { exhibitsOf, nameOf } from '../../working/bench/bench.ts';
import { findRead } from '../../working/bench/open-value.ts';
import type { Facts } from '../../working/facts.ts';
import { rectifierFromTouch } from '../../working/touch/rectifier-from-touch.ts';
import { computedBound, type TouchReading } from '../../working/touch/touch-facts.ts';
import { atMost, type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface PlugWay extends Subject {
  readonly readings: readonly TouchReading[];
}

const WAYS = ['A', 'B'] as const;
const CLEARLY_ABOVE = 2; // standard uncertainties by which a reading must exceed the computed bound to be remarked on

/** Does the current from the output through a hand to earth stay below what is felt, both plug ways, at the highest mains? */
export const touchCurrent = defineCheck<PlugWay>({
  id: 'shock/touch-current',
  consequence: 'lethal',
  needs: ['touchBothWays'],
  subjects: plugWays,
  judge: (facts, way) => {
    if (way.readings.length === 0)
      return { judgement: undecided('notAssessed', 'notLooked', { notes: [{ key: 'otherPlugWay', args: {} }] }) };
    return worstAnswer(way.readings.map((reading) => judgeReading(facts, reading)));
  },
});

function plugWays({ bench, touch }: Facts): readonly PlugWay[] | 'notLooked' {
  if (touch.length === 0) return 'notLooked';
  const ways = new Map<string, { about: string; readings: TouchReading[] }>();
  for (const reading of touch) {
    const own = ways.get(reading.id) ?? { about: reading.about, readings: [] };
    own.readings.push(reading);
    ways.set(reading.id, own);
  }
  // a reading one way round says nothing of the other
  for (const reading of touch) {
    if (reading.orientation === null) continue;
    const from = reading.id.slice(0, reading.id.lastIndexOf('~'));
    for (const way of WAYS)
      if (!ways.has(`${from}~${way}`)) ways.set(`${from}~${way}`, { about: `${nameOf(bench, from)}, plug way ${way}`, readings: [] });
  }
  return [...ways.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([id, way]) => ({ id, ...way }));
}

function judgeReading(facts: Facts, reading: TouchReading): Answer {
  const { opened, field } = reading;
  if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
  if (reading.refused !== null) {
    // near zero behind an isolating source whatever the unit does: kept, struck out, refused, with the reason
    const notes = [{ key: reading.refused, args: { supply: reading.supply ?? '' } }];
    return { judgement: undecided('notAssessed', 'refusedEvidence', { fields: [field], notes }) };
  }
  if (reading.current === null)
    return {
      judgement: undecided('notAssessed', 'notComparable', {
        fields: [field],
        notes: reading.asVoltage ? [{ key: 'earthMeterNotStated', args: {} }] : [],
      }),
    };
  const column = reading.peak ? 'peak' : 'rms';
  const line = (row: 'es1' | 'es2'): LimitLine =>
    limitLine(row, 'atMost', getCell(limits, row, column, `touch/limit-${row}-${column}`, 'I'));
  const others = reading.peak
    ? []
    : (['class2', 'phoneSupply'] as const).map((row) =>
        limitLine(row, 'atMost', getCell(olderLines, row, 'rms', `touch/line-${row}`, 'I')),
      );
  const felt = atMost(reading.current, line('es1'), facts.setting.decision);
  const letGo = atMost(reading.current, line('es2'), facts.setting.decision);
  if (reading.asVoltage && reading.current.side !== undefined && felt.outcome !== 'fail')
    return {
      judgement: undecided('notAssessed', 'notComparable', {
        measured: reading.current,
        fields: [field],
        notes: [{ key: 'lessThroughMeter', args: {} }],
      }),
      show: 'milliamperes',
    };
  const notes: Note[] = [
    { key: 'scaledToHighestMains', args: {} },
    ...crossCheck(facts, reading.current),
    ...rectifierNotes(facts, reading),
  ];
  if (reading.asVoltage) notes.push({ key: 'fromVoltageToEarth', args: {} });
  if (reading.method !== 'network') notes.push({ key: 'notTheNetwork', args: { method: reading.method ?? 'notStated' } });
  const beside = computedBound(facts.bench, facts.setting).map(({ current }) => current.step);
  const common = { show: 'milliamperes', beside, notes } as const;
  if (letGo.outcome === 'fail' && letGo.headline)
    return { ...common, judgement: { ...letGo, others: [line('es1'), ...others] }, consequence: 'lethal' };
  const answer: Answer = { ...common, judgement: { ...felt, others: [line('es2'), ...others] }, consequence: 'injurious' };
  if (letGo.outcome !== 'fail') return answer;
  // beyond 5 mA but not surely beyond 6.5: the injurious word stands by itself, the lethal one hangs on a limit from memory and stands in doubt
  return {
    ...answer,
    notes: [...notes, { key: 'alsoBeyondLetGo', args: {} }],
    beyond: { id: 'let-go', answer: { ...common, judgement: letGo, consequence: 'lethal' } },
  };
}

/** What both plug ways together say of the rectifier, and whether the board says otherwise. */
function rectifierNotes({ bench, touch }: Facts, reading: TouchReading): Note[] {
  const from = reading.id.slice(0, reading.id.lastIndexOf('~'));
  const hint = rectifierFromTouch(touch).find((one) => one.from === from);
  if (hint === undefined || hint.says === 'cannotTell') return [];
  const recorded = exhibitsOf(bench, 'board').flatMap(({ struck, rectifier }) => (struck === undefined ? [findRead(rectifier)] : []));
  const contradicted =
    (hint.says === 'oneConductor' && recorded.includes('bridge')) || (hint.says === 'symmetric' && recorded.includes('singleDiode'));
  return [
    {
      key: contradicted ? 'plugWaysContradictBoard' : hint.says === 'oneConductor' ? 'plugWaysOneConductor' : 'plugWaysSymmetric',
      args: {},
    },
  ];
}

/** A reading clearly above what the parts across the barrier can pass means another way through. */
function crossCheck(facts: Facts, measured: Derived): Note[] {
  const bounds = computedBound(facts.bench, facts.setting);
  if (bounds.length === 0) return [];
  const sum = bounds.reduce((total, { current }) => total + current.value, 0);
  const u = uncertaintyOf(measured.form);
  const key = u !== null && measured.value - CLEARLY_ABOVE * u > sum ? 'aboveComputedBound' : 'belowComputedBound';
  return [{ key, args: { boundMa: sum * 1000, parts: bounds.flatMap(({ parts }) => parts).join(', ') } }];
}
