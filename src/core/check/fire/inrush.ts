import type { ExhibitOf } from '../../evidence/case.ts';
import { halfOfIntegral } from '../../formula/board/half-of-integral.ts';
import { derive } from '../../formula/derive.ts';
import { cite } from '../../source/source.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import { exhibitsOf } from '../../working/bench/bench.ts';
import { findRead, openValue } from '../../working/bench/open-value.ts';
import { type Inrush, inrushFacts } from '../../working/board/inrush-facts.ts';
import { ratingOf } from '../../working/board/part-quantity.ts';
import { trackMelts } from '../../working/board/track-facts.ts';
import type { Facts } from '../../working/facts.ts';
import { atMost, type LimitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface PluggingIn extends Subject {
  readonly boards: readonly ExhibitOf<'board'>[];
}

const PRINTED = cite('house', 'what is printed on the part or in its sheet', 'official-text');
const printed = (name: string, at: Derived): LimitLine => ({ name, kind: 'atMost', at, source: PRINTED, grade: 'official-text' });

/** Does the first part stand being plugged in at the crest of the highest mains, bulk capacitor empty, limiter cold? */
export const inrush = defineCheck<PluggingIn>({
  id: 'fire/inrush',
  consequence: 'injurious',
  needs: ['inrushParts'],
  subjects: ({ bench }) => {
    const boards = exhibitsOf(bench, 'board').filter(
      (board) => board.struck === undefined && openValue(board.inrush).state !== 'notLooked',
    );
    return boards.length > 0 ? [{ id: 'mains', about: 'plugging in', boards }] : 'notLooked';
  },
  judge: (facts, { boards }) => worstAnswer(boards.map((board) => judgeBoard(facts, board))),
});

function judgeBoard(facts: Facts, board: ExhibitOf<'board'>): Answer {
  const field = `/exhibits/${board.id}/inrush`;
  const opened = openValue(board.inrush);
  if (opened.state === 'absent')
    return { judgement: undecided('inconclusive', 'unknownValue', { fields: [field], notes: [{ key: 'noLimiter', args: {} }] }) };
  if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
  const limiter = facts.bench.parts.get(opened.v);
  if (limiter === undefined) return { judgement: undecided('notAssessed', 'notLooked', { fields: [field] }) };
  const found = inrushFacts(facts.bench, facts.setting, board, limiter);
  if (!('because' in found)) return judgeInrush(facts, board, found);
  if (found.because === 'value') return { judgement: judgeState(found.opened, found.field) };
  if (found.because === 'wiring')
    return { judgement: undecided('notAssessed', 'notImplemented', { notes: [{ key: 'seriesOrDoubler', args: {} }] }) };
  return { judgement: undecided(found.because === 'doesNotApply' ? 'notApplicable' : 'notAssessed', found.because) };
}

function judgeInrush(facts: Facts, board: ExhibitOf<'board'>, { limiter, peak, integral, energy, coldOnly }: Inrush): Answer {
  const first = board.fusePart === undefined ? undefined : facts.bench.parts.get(board.fusePart);
  const fuse = findRead<string>(board.fuse);
  const notes: Note[] = [
    { key: 'inrushPeak', args: { peak: peak.value } },
    ...(coldOnly ? [{ key: 'hotRestart', args: {} }] : []),
    { key: 'rectifierSurge', args: {} },
  ];
  const beside = [peak.step, integral.step, energy.step];
  if (fuse === 'fusibleResistor') {
    // the limiter is the fuse unless another part is named: what it turns into heat decides, and beyond its rating it burns
    const stands = ratingOf(first ?? limiter, 'energy', 'energy', 'E_m').at;
    const measured = first === undefined || first.id === limiter.id ? energy : null;
    if (stands === null || measured === null)
      return { judgement: undecided('notAssessed', 'limitUnknown', { measured: energy, notes }), beside };
    return { judgement: { ...atMost(measured, printed('pulseEnergy', stands), facts.setting.decision), notes }, beside };
  }
  const melts = first === undefined ? null : ratingOf(first, 'meltingI2t', 'meltingIntegral', 'J_m').at;
  if ((fuse === 'cartridge' || fuse === 'wire') && melts !== null) {
    const half: LimitLine = {
      name: 'halfMelting',
      kind: 'atMost',
      at: derive(halfOfIntegral, { melting: melts }, `board/${board.id}/half-melting`),
      source: halfOfIntegral.source,
      grade: 'common-practice',
    };
    // a fuse that melts when plugged in opens: the unit is dead, nothing burns
    return {
      judgement: { ...atMost(integral, printed('meltingIntegral', melts), facts.setting.decision), others: [half], notes },
      consequence: 'disappointing',
      beside,
    };
  }
  const track = fuse === 'track' ? trackMelts(facts.bench, facts.setting, board) : null;
  const estimate = track === null ? [] : [{ key: 'trackMelts', args: { current: track.current.value, integral: track.integral.value } }];
  const steps = track === null ? beside : [...beside, track.integral.step];
  return { judgement: undecided('notAssessed', 'limitUnknown', { measured: integral, notes: [...notes, ...estimate] }), beside: steps };
}
