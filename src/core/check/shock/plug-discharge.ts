import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { shareOfPeak } from '../../formula/touch/share-of-peak.ts';
import { plugDischarge as household } from '../../table/iec-60335-1/2010/plug-discharge.ts';
import { plugDischarge as older } from '../../table/iec-60950-1/2005/plug-discharge.ts';
import { chargedCapacitor } from '../../table/iec-62368-1/2018/charged-capacitor.ts';
import { getCell, lookUp } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import type { Facts } from '../../working/facts.ts';
import { computedResidual } from '../../working/touch/computed-residual.ts';
import { type ResidualReading, residualReadings } from '../../working/touch/residual-facts.ts';
import { atMost, type Judgement, type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Pins extends Subject {
  readonly readings: readonly ResidualReading[];
}

const FIRST_ROW_NF = 300;

/** Two seconds after unplugging at the crest of the highest mains: may the pins still be touched? */
export const plugDischarge = defineCheck<Pins>({
  id: 'shock/plug-discharge',
  consequence: 'injurious',
  needs: ['plugDischarge'],
  subjects: ({ bench, setting }) => {
    const readings = residualReadings(bench, setting);
    return readings.length === 0 ? 'notLooked' : [{ id: 'pins', about: 'the mains pins', readings }];
  },
  judge: (facts, { readings }) => {
    const answers = readings.map((reading) => judgeReading(facts, reading));
    // a floor that leaves the question open says nothing against a reading that settles it
    const settled = answers.some(({ judgement }) => judgement.outcome === 'pass' || judgement.outcome === 'fail');
    return worstAnswer(settled ? answers.filter(({ judgement }) => judgement.reason !== 'oneSided') : answers);
  },
});

function judgeReading(facts: Facts, reading: ResidualReading): Answer {
  const { opened, field, capacitance } = reading;
  if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
  const limit = chargedLine(capacitance.state === 'known' ? capacitance.greatest : null, 'charged');
  const others = comparisonLines(facts, reading);
  const computed = computedResidual(facts.bench, facts.setting, capacitance);
  const notes: Note[] = [...reading.notes, ...capacitanceNotes(reading)];
  if (computed !== null) notes.push({ key: 'plugComputed', args: { volts: computed.value } });
  const answer = (judgement: Judgement, more: readonly Note[] = []): Answer => ({
    judgement: { ...judgement, others },
    notes: [...notes, ...more],
    beside: computed === null ? [] : [computed.step],
  });
  const { decision } = facts.setting;
  const floor = reading.atLeast === null ? null : atMost(reading.atLeast, limit, decision);
  const ceiling = reading.atMost === null ? null : atMost(reading.atMost, limit, decision);
  if (floor?.outcome === 'fail') {
    if (capacitance.state !== 'unknown') return answer(floor);
    // a smaller capacitor may hold more than 60 V: it fails only if what must be there to hold this much is too large for it
    const kinder =
      reading.leastCapacitance === null ? null : atMost(reading.atLeast!, chargedLine(reading.leastCapacitance, 'chargedLeast'), decision);
    return kinder?.outcome === 'fail'
      ? answer(kinder)
      : answer({ ...floor, outcome: 'inconclusive', reason: 'unknownValue', headline: false });
  }
  if (ceiling?.outcome === 'pass') return answer(ceiling);
  if (reading.probe !== 'known' && capacitance.state === 'known')
    return answer(undecided('notAssessed', 'notComparable', { fields: [field] }), [
      { key: reading.probe === 'tooHeavy' ? 'plugProbeTooHeavy' : 'plugProbeNotStated', args: {} },
    ]);
  return answer(floor ?? ceiling ?? undecided('notAssessed', 'notComparable', { fields: [field] }));
}

/** By the capacitance; the 60 V of 300 nF and more where it is not known. */
function chargedLine(capacitance: Derived | null, name: string): LimitLine {
  const found = capacitance === null ? null : lookUp(chargedCapacitor, capacitance, 'es1', `touch/pins/limit-${name}`, 'V');
  return limitLine(name, 'atMost', found ?? getCell(chargedCapacitor, FIRST_ROW_NF, 'es1', 'touch/pins/limit-300-nf', 'V'));
}

/** One second, two other standards; neither asks anything up to 0.1 µF. */
function comparisonLines({ setting }: Facts, { capacitance }: ResidualReading): LimitLine[] {
  const exempt = getCell(household, 'oneSecond', 'exempt', 'touch/pins/exempt', 'C');
  if (capacitance.state === 'none' || (capacitance.state === 'known' && capacitance.actual.value <= exempt.value)) return [];
  const share = getCell(older, 'oneSecond', 'share', 'touch/pins/share', 'k');
  const peak = derive(peakOfMains, { rms: setting.high }, 'touch/pins/highest-crest');
  return [
    limitLine('householdOneSecond', 'atMost', getCell(household, 'oneSecond', 'peak', 'touch/pins/limit-household', 'V')),
    limitLine('olderOneSecond', 'atMost', derive(shareOfPeak, { share, peak }, 'touch/pins/limit-older')),
  ];
}

function capacitanceNotes({ capacitance, probe }: ResidualReading): Note[] {
  if (capacitance.state === 'none') return [{ key: 'plugNoCapacitor', args: {} }];
  if (capacitance.state === 'known')
    return [{ key: 'plugCapacitance', args: { parts: capacitance.names.join(', '), farads: capacitance.actual.value } }];
  return [{ key: 'plugCapacitanceUnknown', args: {} }, ...(probe === 'known' ? [] : [{ key: 'plugProbeNotStated', args: {} }])];
}
