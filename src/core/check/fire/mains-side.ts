import { reverseVoltage } from '../../formula/board/reverse-voltage.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { cite } from '../../source/source.ts';
import { given } from '../../trace/derived.ts';
import { openValue } from '../../working/bench/open-value.ts';
import { impulseStood } from '../../working/board/impulse-stood.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import { type MainsPart, mainsParts } from '../../working/circuit/mains-parts.ts';
import type { Facts } from '../../working/facts.ts';
import { atLeast, type LimitLine, oneOf, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

const behindFuse: LimitLine = {
  name: 'behindTheFuse',
  kind: 'oneOf',
  at: null,
  words: ['behindFuse'],
  source: cite('bench', 'whatever stands between the poles stands behind the first part that opens', 'common-practice'),
  grade: 'common-practice',
};
const fused: LimitLine = {
  name: 'realFuse',
  kind: 'oneOf',
  at: null,
  words: ['cartridge', 'wire', 'fusibleResistor'],
  source: cite('iec-60127', 'a fuse is a part made and tested to break; a track or a plain resistor is none', 'memory'),
  grade: 'memory',
};
const classX: LimitLine = {
  name: 'classAcrossMains',
  kind: 'oneOf',
  at: null,
  words: ['X1', 'X2', 'X3', 'Y1', 'Y2'],
  source: cite('iec-60384-14', 'capacitors between the conductors of the mains are of class X or Y', 'memory'),
  grade: 'memory',
};

/** Are the parts on the mains side fit for where the trace finds them: a fuse in a pole, classes across the poles, rectifiers for the crest? */
export const mainsSide = defineCheck<MainsPart>({
  id: 'fire/mains-side',
  consequence: 'injurious',
  needs: ['circuit'],
  subjects: ({ bench, circuit }) => {
    const parts = circuit === null ? [] : mainsParts(bench, circuit);
    return parts.length > 0 ? parts : 'notLooked';
  },
  judge: (facts, subject) => {
    if (subject.asks === 'fuse') return judgeFuse(subject);
    return subject.asks === 'class' ? judgeClass(facts, subject) : judgeRectifier(facts, subject);
  },
});

function judgeFuse({ parts, first, found }: MainsPart & { asks: 'fuse' }): Answer {
  const fields = (found ?? first ?? parts[0]) === undefined ? [] : [`/parts/${(found ?? first ?? parts[0])!.id}/kind`];
  if (found !== null) {
    if (parts.length === 0) return { judgement: oneOf(found.kind === 'fusibleResistor' ? 'fusibleResistor' : 'fuse', fused, true, fields) };
    const notes = [{ key: 'beforeFuse', args: { parts: parts.map(({ ref }) => ref).join(', ') } }];
    return { judgement: { ...oneOf('beforeFuse', behindFuse, false, fields), notes }, consequence: 'disappointing' };
  }
  if (first === null) return { judgement: undecided('notAssessed', 'notLooked') };
  const kind = openValue<string>(first.kind);
  if (kind.state !== 'read') return { judgement: judgeState(kind, `/parts/${first.id}/kind`) };
  return { judgement: oneOf(kind.v === 'resistor' ? 'plainResistor' : 'noFuse', fused, false, fields) };
}

function judgeClass(facts: Facts, { part }: MainsPart & { asks: 'class' }): Answer {
  const field = `/parts/${part.id}/safetyClass`;
  const opened = openValue<string>(part.safetyClass);
  if (opened.state === 'absent')
    return {
      judgement: { ...oneOf('ordinaryCapacitor', classX, false, [field]), notes: [{ key: 'because', args: { because: opened.because } }] },
    };
  if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
  const judgement = oneOf(opened.v, classX, classX.words!.includes(opened.v), [field]);
  const stood = impulseStood(facts, part, opened.v);
  return stood === null ? { judgement } : { judgement, beside: [stood.volts.step], notes: stood.notes };
}

function judgeRectifier({ bench, setting }: Facts, { part, crests }: MainsPart & { asks: 'rectifier' }): Answer {
  const own = bench.parts.get(part.id)!;
  const { at, opened, field } = ratingOf(own, 'voltage', 'voltage', 'V_R');
  if (at === null) return { judgement: judgeState(opened, field) };
  const crest = derive(peakOfMains, { rms: setting.high }, `circuit/${part.id}/crest`);
  const count = given('constant', crests, '1', {
    id: `circuit/${part.id}/crests`,
    name: crests > 1 ? 'twoCrests' : 'oneCrest',
    symbol: 'n',
    source: cite('circuit-theory', 'rectifiers', 'reasoned'),
  });
  const blocks = derive(reverseVoltage, { crest, crests: count }, `circuit/${part.id}/reverse-voltage`);
  const limit: LimitLine = { name: 'blocksCrest', kind: 'atLeast', at: blocks, source: reverseVoltage.source, grade: 'reasoned' };
  return { judgement: atLeast(at, limit, setting.decision) };
}
