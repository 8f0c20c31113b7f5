import { insulationResistance } from '../../table/din-vde-0701-0702/2008/insulation-resistance.ts';
import { touchCurrent } from '../../table/iec-62368-1/2018/touch-current.ts';
import { getCell } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import { capacitanceAcross, explainedBy } from '../../working/cold/across-barrier.ts';
import { type ColdPair, type ColdReading, coldPairs } from '../../working/cold/cold-facts.ts';
import type { Facts } from '../../working/facts.ts';
import { strengthLimits } from '../../working/insulation/strength-limits.ts';
import { atLeast, type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { judgeStrength } from '../judge-strength.ts';
import { worstAnswer } from '../worst-answer.ts';

const BRIDGED_BELOW_OHM = 1000; // a wire, a solder bridge, a failed part: the word for the rung only; house convention

/** Before power: does anything but insulation stand between the mains pins and what can be touched? */
export const coldInsulation = defineCheck<ColdPair>({
  id: 'shock/cold-insulation',
  consequence: 'lethal',
  needs: ['coldInsulation'],
  subjects: ({ bench }) => {
    const pairs = coldPairs(bench);
    return pairs.length > 0 ? pairs : 'notLooked';
  },
  judge: (facts, pair) => {
    const resistances = pair.readings.filter(({ quantity }) => quantity === 'insulation' || quantity === 'resistance');
    const answers = resistances.map((reading) => judgeReading(facts, pair, reading));
    // a floor or ceiling that leaves the question open says nothing against a reading that settles it
    const settled = answers.some(({ judgement }) => judgement.outcome === 'pass' || judgement.outcome === 'fail');
    const counted = settled ? answers.filter(({ judgement }) => judgement.reason !== 'oneSided') : answers;
    const strength = judgeStrength(pair, strengthLimits(facts.setting, pair.id, null), facts.setting.decision);
    const all = [...(counted.length === 0 ? [] : [worstAnswer(counted)]), ...strength.answers];
    const answer: Answer = all.length === 0 ? { judgement: undecided('notAssessed', 'notLooked') } : worstAnswer(all, 'severalThings');
    if (all.length === 0 && !pair.readings.some((reading) => reading.strength !== undefined)) return withCapacitance(facts, pair, answer);
    const dressed: Answer = {
      ...answer,
      notes: [...(answer.notes ?? []), ...strength.notes],
      beside: [...(answer.beside ?? []), ...strength.beside],
    };
    return withCapacitance(facts, pair, dressed);
  },
});

function line(row: 'basic' | 'reinforced'): LimitLine {
  return limitLine(row, 'atLeast', getCell(insulationResistance, row, 'least', `cold/limit-${row}`, 'R'));
}

function judgeReading(facts: Facts, pair: ColdPair, reading: ColdReading): Answer {
  const { opened, field } = reading;
  if (opened.state !== 'read' || reading.value === null) return { judgement: judgeState(opened, field) };
  if (pair.insulation === null)
    return { judgement: undecided('inconclusive', 'unknownValue', { fields: [field], notes: [{ key: 'sideNotStated', args: {} }] }) };
  const enough =
    reading.testVoltage !== null &&
    reading.testVoltage >= getCell(insulationResistance, 'basic', 'testVoltage', 'cold/test-voltage', 'U').value;
  // at a low voltage insulation looks better than it is: such a reading can only fail
  const value = enough ? reading.value : atBest(reading.value);
  const notes = enough ? [] : [{ key: 'insulationLowVoltage', args: { volts: reading.testVoltage ?? 'notStated' } }];
  const basic = atLeast(value, line('basic'), facts.setting.decision);
  if (basic.outcome === 'fail') {
    const rung = reading.value.side !== 'above' && reading.value.value < BRIDGED_BELOW_OHM ? 'bridgedOrAbsent' : 'belowBasic';
    const others = pair.insulation === 'reinforced' ? [line('reinforced')] : [];
    return explained(facts, reading.value, { judgement: { ...basic, others }, rung, consequence: 'lethal', notes });
  }
  if (pair.insulation === 'basic') return { judgement: basic, rung: basic.outcome === 'pass' ? 'basicMet' : 'undecided', notes };
  const judgement = { ...atLeast(value, line('reinforced'), facts.setting.decision), others: [line('basic')] };
  if (judgement.outcome === 'pass') return { judgement, rung: 'reinforcedMet', notes };
  if (judgement.outcome === 'fail')
    return explained(facts, reading.value, { judgement, rung: 'basicNotReinforced', consequence: 'injurious', notes });
  const certain = basic.outcome === 'pass' ? [{ key: 'basicMetRestUndecided', args: {} }] : [];
  return { judgement, rung: 'undecided', notes: [...notes, ...certain] };
}

/** A resistor that is recorded across the barrier, and passes less than is felt, has rules of its own that are not held here. */
function explained({ bench, setting }: Facts, resistance: Derived, answer: Answer): Answer {
  const felt = getCell(touchCurrent, 'es1', 'rms', 'cold/felt', 'I').value;
  if (resistance.side !== undefined || resistance.value * felt < setting.high.value || !explainedBy(bench, resistance.value)) return answer;
  return {
    judgement: { ...answer.judgement, outcome: 'inconclusive', reason: 'limitUnknown', headline: false },
    rung: 'undecided',
    notes: [...(answer.notes ?? []), { key: 'insulationThroughResistor', args: {} }],
  };
}

function atBest(value: Derived): Derived {
  const side = value.side === 'above' || value.side === 'anywhere' ? 'anywhere' : 'below';
  return { ...value, side, step: { ...value.step, side, u: null } };
}

function withCapacitance({ bench, setting, touch }: Facts, pair: ColdPair, answer: Answer): Answer {
  const across = pair.readings.flatMap((reading, index) =>
    reading.quantity === 'capacitance' && reading.opened.state === 'read' && reading.value !== null
      ? [capacitanceAcross(bench, setting, touch, reading.value, `${pair.id}-${index}`)]
      : [],
  );
  return {
    ...answer,
    notes: [...(answer.notes ?? []), ...across.flatMap(({ notes }) => notes)],
    beside: [...(answer.beside ?? []), ...across.map(({ current }) => current.step)],
  };
}
