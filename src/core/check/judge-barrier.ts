import type { Consequence, Rung } from '../result/assessment.ts';
import type { Derived } from '../trace/derived.ts';
import type { DistanceLimits } from '../working/insulation/clearance-limits.ts';
import type { DistanceReading, PairFacts } from '../working/insulation/pair-facts.ts';
import { atLeast, type DecisionRule, type Judgement, limitLine, oneOf, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';
import { judgeState } from './judge-state.ts';

/** Rung to consequence for everything that stands between the mains and a hand (docs/decisions/0003-verdict.md). */
export const BARRIER_CONSEQUENCES: Partial<Record<Rung, Consequence>> = {
  bridgedOrAbsent: 'lethal',
  belowBasic: 'lethal',
  basicNotReinforced: 'injurious',
};

/**
 * Places one distance of one pair on its rung. Towards a hand reinforced insulation is asked for; between mains conductors and towards earth
 * basic is enough. A gap that is not there is bridged.
 */
export function judgeDistance(pair: PairFacts, reading: DistanceReading, limits: DistanceLimits, rule: DecisionRule): Answer {
  if (reading.opened.state === 'absent') {
    const limit = limitLine('reinforced', 'atLeast', limits.reinforced);
    return {
      judgement: oneOf('absent', limit, false, [reading.field]),
      rung: 'bridgedOrAbsent',
      consequence: pair.betweenMains ? 'injurious' : 'lethal',
    };
  }
  if (reading.distance === null) return { judgement: judgeState(reading.opened, reading.field) };
  if (pair.insulation === 'basic') return basicEnough(pair, reading.distance, limits, rule);
  const reinforced = atLeast(reading.distance, limitLine('reinforced', 'atLeast', limits.reinforced), rule);
  const basic = atLeast(reading.distance, limitLine('basic', 'atLeast', limits.basic), rule);
  const others = [limitLine('basic', 'atLeast', limits.basic), ...limits.others.map(({ name, at }) => limitLine(name, 'atLeast', at))];
  const dressed = (judgement: Judgement): Judgement => ({ ...judgement, others });
  if (reading.distance.value <= 0 && reading.distance.side === undefined)
    return {
      judgement: dressed({ ...reinforced, outcome: 'fail', reason: 'notMet', headline: true }),
      rung: 'bridgedOrAbsent',
      consequence: 'lethal',
      show: 'millimetres',
    };
  if (reinforced.outcome === 'pass') return { judgement: dressed(reinforced), rung: 'reinforcedMet', show: 'millimetres' };
  if (basic.outcome === 'fail') {
    // the pair stands below basic: the headline follows the basic line, the ratio stays that of the reinforced one
    const judgement = { ...reinforced, outcome: 'fail', reason: 'notMet', headline: reinforced.headline || basic.headline } as const;
    return { judgement: dressed(judgement), rung: 'belowBasic', consequence: BARRIER_CONSEQUENCES.belowBasic!, show: 'millimetres' };
  }
  if (reinforced.outcome === 'fail') {
    const notes = basic.outcome === 'pass' ? [] : [{ key: 'basicUndecided', args: { probability: basic.probability ?? '' } }];
    return {
      judgement: dressed(reinforced),
      rung: 'basicNotReinforced',
      consequence: BARRIER_CONSEQUENCES.basicNotReinforced!,
      show: 'millimetres',
      notes,
    };
  }
  const notes = basic.outcome === 'pass' ? [{ key: 'basicMetRestUndecided', args: {} }] : [];
  return { judgement: dressed(reinforced), rung: 'undecided', show: 'millimetres', notes };
}

function basicEnough(pair: PairFacts, distance: Derived, limits: DistanceLimits, rule: DecisionRule): Answer {
  const judgement = atLeast(distance, limitLine('basic', 'atLeast', limits.basic), rule);
  const rung =
    judgement.outcome === 'pass'
      ? 'basicMet'
      : judgement.outcome === 'fail'
        ? distance.value <= 0
          ? 'bridgedOrAbsent'
          : 'belowBasic'
        : 'undecided';
  return {
    judgement,
    rung,
    // nobody stands on the other side of a gap between mains conductors: an arc there is a matter of fire
    consequence: pair.betweenMains ? 'injurious' : 'lethal',
    show: 'millimetres',
    notes: pair.betweenMains ? [{ key: 'betweenMains', args: {} }] : [],
  };
}

/** Why a pair is not put to the tables at all, or null. */
export function pairOutside(pair: PairFacts): Judgement | null {
  if (pair.id === BARRIER_NOT_MEASURED.id) return undecided('notAssessed', 'notLooked');
  if (pair.insulation === 'fuseNotStated')
    return undecided('notAssessed', 'notLooked', { notes: [{ key: 'fuseSideNotStated', args: {} }] });
  if (pair.insulation === 'functional') return undecided('notApplicable', 'doesNotApply');
  if (pair.insulation === 'floating')
    return undecided('notApplicable', 'doesNotApply', { notes: [{ key: 'floatingConductor', args: {} }] });
  if (pair.insulation === 'unknown') return undecided('inconclusive', 'unknownValue', { notes: [{ key: 'sideNotStated', args: {} }] });
  return null;
}

/** What stands for the barrier when every recorded pair lies on one side of it: nobody measured the distance that counts. */
const BARRIER_NOT_MEASURED: PairFacts = {
  id: 'barrier',
  about: 'mains to what can be touched',
  ends: ['mains', 'touchable'],
  insulation: 'reinforced',
  betweenMains: false,
  surface: [],
  air: [],
};

/** The pairs of a check; a pair between two mains conductors or two outputs settles nothing of what stands before a hand. */
export function withBarrier(pairs: readonly PairFacts[]): readonly PairFacts[] {
  const across = pairs.some(({ insulation }) => insulation === 'reinforced' || insulation === 'unknown');
  return across ? pairs : [...pairs, BARRIER_NOT_MEASURED];
}
