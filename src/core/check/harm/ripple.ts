import { cite } from '../../source/source.ts';
import { given } from '../../trace/derived.ts';
import { type RippleReading, rippleReadings } from '../../working/load/ripple-facts.ts';
import { type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

interface Rippled extends Subject {
  readonly readings: readonly RippleReading[];
}

const HABIT_V = 0.2; // peak to peak; what the trade expects, printed in no standard
const HABIT_HZ = 20e6; // in this bandwidth
const SAME_BANDWIDTH = 0.1;

/**
 * How much ripple is there, and how was it read? No publication that we know of limits it at the socket of an adapter (IEC 62684 leaves it to
 * others), so nothing is judged: the reading is shown, beside the habit of the trade where it was read the same way.
 */
export const ripple = defineCheck<Rippled>({
  id: 'harm/ripple',
  consequence: 'damaging',
  needs: [],
  subjects: ({ bench, levels }) => {
    const readings = rippleReadings(bench);
    const seen = [...new Set(readings.map(({ level }) => level))].sort();
    if (seen.length === 0) return 'limitUnknown';
    return seen.map((id) => ({
      id,
      about: levels.find((level) => level.id === id)?.about ?? id,
      readings: readings.filter(({ level }) => level === id),
    }));
  },
  judge: (_facts, { readings }) => greatest(readings.map(show)),
});

function show({ exhibit, opened, field, value, bandwidth, missing }: RippleReading): Answer {
  if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
  if (value === null) return { judgement: undecided('inconclusive', 'unknownValue', { fields: [field] }) };
  const fields = [field];
  const open = missing[0];
  if (open !== undefined)
    return {
      judgement: undecided('notAssessed', 'notComparable', {
        fields,
        notes: [{ key: 'rippleWithout', args: { missing: missing.join(', ') } }],
      }),
    };
  const asHabit = bandwidth !== null && Math.abs(bandwidth - HABIT_HZ) <= SAME_BANDWIDTH * HABIT_HZ;
  const notes = [
    { key: 'rippleRead', args: { exhibit: exhibit.id, bandwidth: bandwidth ?? 'notStated' } },
    { key: asHabit ? 'rippleHabit' : 'rippleOtherBandwidth', args: {} },
  ];
  return { judgement: undecided('notAssessed', 'limitUnknown', { measured: value, fields, others: asHabit ? [habitLine()] : [], notes }) };
}

function habitLine(): LimitLine {
  const source = cite(
    'bench',
    'habit of the trade: 200 mV peak to peak in 20 MHz with 0.1 µF and 10 µF at the probe; no limit',
    'common-practice',
  );
  return limitLine(
    'rippleHabit',
    'atMost',
    given('constant', HABIT_V, 'V', { id: 'load/ripple-habit', name: 'rippleHabit', symbol: 'V_pp', source }),
  );
}

/** Of several readings the largest is shown; one that can be shown goes before one that cannot. */
function greatest(answers: readonly Answer[]): Answer {
  const size = ({ judgement: { measured } }: Answer): number =>
    measured !== null && 'value' in measured ? measured.value : Number.NEGATIVE_INFINITY;
  return answers.reduce((most, answer) => (size(answer) > size(most) ? answer : most));
}
