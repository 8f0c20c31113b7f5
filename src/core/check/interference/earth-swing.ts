import { earthSwing as table } from '../../table/iec-62684/2018/earth-swing.ts';
import { getCell } from '../../table/look-up.ts';
import { nameOf } from '../../working/bench/bench.ts';
import type { Facts } from '../../working/facts.ts';
import { type EarthSwing, earthSwings } from '../../working/load/earth-swing-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Output extends Subject {
  readonly readings: readonly EarthSwing[];
}

/** Does the output stay quiet against earth, so that a touch screen keeps its head? As information: a figure of supplies for telephones. */
export const earthSwing = defineCheck<Output>({
  id: 'interference/earth-swing',
  consequence: 'informative',
  needs: [],
  subjects: ({ bench }) => {
    const readings = earthSwings(bench);
    const ports = [...new Set(readings.map(({ exhibit }) => exhibit.port))].sort();
    if (ports.length === 0) return 'notLooked';
    return ports.map((id) => ({ id, about: nameOf(bench, id), readings: readings.filter(({ exhibit }) => exhibit.port === id) }));
  },
  judge: (facts, { readings }) => worstAnswer(readings.map((reading) => judgeOne(reading, facts))),
});

function judgeOne({ exhibit, opened, field, value, pulse, supply }: EarthSwing, { setting }: Facts): Answer {
  if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
  if (value === null) return { judgement: undecided('inconclusive', 'unknownValue', { fields: [field] }) };
  if (supply !== 'direct') {
    const notes = [supply === null ? { key: 'supplyNotStated', args: {} } : { key: 'supplyNotDirect', args: { supply } }];
    return { judgement: undecided('notAssessed', 'refusedEvidence', { measured: value, fields: [field], notes }) };
  }
  const limit = limitLine('earthSwing', 'atMost', getCell(table, 'phoneSupply', 'most', 'load/earth-swing', 'V_cm'));
  const shortest = getCell(table, 'phoneSupply', 'pulse', 'load/earth-swing-pulse', 't').value;
  const judgement = atMost(value, limit, setting.decision);
  const notes = [{ key: 'earthSwingFrom', args: { exhibit: exhibit.id } }];
  if (judgement.outcome === 'pass' || (pulse !== null && pulse > shortest)) return { judgement, notes };
  // pulses that are short are let pass however high they are, and of these nobody told
  const key = pulse === null ? 'pulseNotStated' : 'pulseShort';
  return {
    judgement:
      pulse === null
        ? { ...judgement, outcome: 'inconclusive', reason: 'unknownValue', headline: false }
        : undecided('notApplicable', 'doesNotApply', { measured: value, limit, fields: [field] }),
    notes: [...notes, { key, args: { shortest } }],
  };
}
