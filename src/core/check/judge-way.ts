import { cite } from '../source/source.ts';
import { combine } from '../trace/combine.ts';
import { type Derived, given } from '../trace/derived.ts';
import { BASIC, type BarrierWay, DOUBLE, type Strength } from '../working/barrier/strength.ts';
import { atLeast, type DecisionRule, type Judgement, type LimitLine, limitLine, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';
import { BARRIER_CONSEQUENCES } from './judge-barrier.ts';

const SAME = 1e-9; // sums of layers are exact up to the last bits

/** Two layers: double or reinforced insulation stands between the mains and a hand. */
export function askedLayers(): Derived {
  return given('constant', DOUBLE, '1', {
    id: 'barrier/asked',
    name: 'layersAsked',
    symbol: 'q_a',
    source: cite(
      'iec-62368-1',
      'clause 4.3: double or reinforced safeguard between hazardous voltage and an ordinary person',
      'secondary',
      {
        alsoBy: ['published test reports: reinforced between mains and output'],
      },
    ),
  });
}

/** Pieces in a row, in layers; a piece without a single value stands with what is surely there. */
export function layersOf(ways: readonly BarrierWay[], id: string): Derived {
  const pieces = ways.map(
    ({ id: way, strength }): Derived =>
      strength.layers ?? given('constant', strength.low, '1', { id: `barrier/way/${way}`, name: 'layersOfWay', symbol: 'q' }),
  );
  const named = Object.fromEntries(pieces.map((piece, index) => [`q${index + 1}`, piece]));
  return combine(
    {
      kind: 'reduce',
      unit: '1',
      formula: null,
      symbols: Object.fromEntries(pieces.map((_, index) => [`q${index + 1}`, `q_${index + 1}`])),
      moves: Object.fromEntries(pieces.map((_, index) => [`q${index + 1}`, 'up' as const])),
      compute: (plain) => Object.values(plain).reduce((sum, one) => sum + one, 0),
    },
    named,
    { id, name: 'layersInRow', symbol: 'q' },
  );
}

/** Its grade is the weakest of the figures that both stand on. */
function lineFor(layers: Derived): LimitLine {
  const asked = limitLine('layersAsked', 'atLeast', askedLayers());
  const { grade, source } = limitLine('layersAsked', 'atLeast', layers);
  return grade === 'memory' ? { ...asked, grade, source } : asked;
}

const BY_DISTANCE: ReadonlySet<BarrierWay['kind']> = new Set(['air', 'surface', 'edge', 'core', 'joint']);

/**
 * Places pieces in a row on their rung: below basic, basic, or reinforced. They fail only where even the best that is open would not do, and
 * pass only where the worst would. A rule (one tape, enamel, an ordinary ceramic) has no ratio and counts as beyond any allowance.
 */
export function judgeWays(ways: readonly BarrierWay[], id: string, sum: Pick<Strength, 'low' | 'high'>, rule: DecisionRule): Answer {
  const layers = layersOf(ways, id);
  const compared = atLeast(layers, lineFor(layers), rule);
  const { low, high } = sum;
  const ruled = ways.some(({ kind }) => !BY_DISTANCE.has(kind));
  const fields = [...new Set(ways.flatMap(({ strength }) => strength.fields))];
  const notes = ways.flatMap(({ strength }) => strength.notes);
  const judged = (more: Pick<Judgement, 'outcome' | 'reason'> & Partial<Judgement>): Judgement => ({
    ...compared,
    headline: false,
    fields,
    ...more,
  });
  if (high < DOUBLE - SAME) {
    const rung = high < SAME ? 'bridgedOrAbsent' : high < BASIC - SAME ? 'belowBasic' : 'basicNotReinforced';
    const open = rung === 'basicNotReinforced' && low < BASIC - SAME ? [{ key: 'basicNotCertain', args: {} }] : [];
    const judgement = judged({ outcome: 'fail', reason: 'notMet', headline: compared.headline || ruled });
    return { judgement, rung, consequence: BARRIER_CONSEQUENCES[rung] ?? 'lethal', notes: [...notes, ...open] };
  }
  if (low >= DOUBLE - SAME) return { judgement: judged({ outcome: 'pass', reason: 'met' }), rung: 'reinforcedMet', notes };
  const measured = ways.every(({ strength }) => strength.layers !== null);
  if (ways.some(({ strength }) => strength.notLooked)) return { judgement: undecided('notAssessed', 'notLooked', { fields }), notes };
  const judgement = judged({
    outcome: 'inconclusive',
    reason: measured && !ruled ? 'withinUncertainty' : 'unknownValue',
    probability: measured && !ruled ? compared.probability : null,
  });
  return { judgement, rung: 'undecided', notes: [...notes, ...(low >= BASIC - SAME ? [{ key: 'basicMetRestUndecided', args: {} }] : [])] };
}
