import type { Part } from '../evidence/sample.ts';
import { cite } from '../source/source.ts';
import { combine } from '../trace/combine.ts';
import type { Derived } from '../trace/derived.ts';
import { ratingOf } from '../working/board/part-quantity.ts';
import { atMost, type DecisionRule, type LimitLine } from './decide.ts';
import type { Answer } from './define-check.ts';
import { judgeState } from './judge-state.ts';

const SHARE = 0.8; // of the rating, within which makers keep what they cannot see: ringing and spikes; two makers’ notes

/**
 * A voltage against the rating of the part that stands it. With its spike in it, the rating itself is the line. Without, the plateau alone
 * beyond the rating fails, within eight tenths of it passes, and between the two nothing is said.
 */
export function judgeRating(part: Part, plateau: Derived, withSpike: Derived | null, rule: DecisionRule): Answer {
  const rating = ratingOf(part, 'voltage', 'voltage', 'U_r');
  if (rating.at === null) return { judgement: judgeState(rating.opened, rating.field) };
  const line = (name: string, at: Derived, place: string): LimitLine => ({
    name,
    kind: 'atMost',
    at,
    source: cite('bench', place, name === 'ratedVoltage' ? 'official-text' : 'common-practice'),
    grade: name === 'ratedVoltage' ? 'official-text' : 'common-practice',
  });
  const rated = line('ratedVoltage', rating.at, 'rating as marked on the part or printed in its sheet');
  if (withSpike !== null) return { judgement: atMost(withSpike, rated, rule) };
  const kept = combine(
    {
      kind: 'reduce',
      unit: 'V',
      formula: null,
      symbols: { rating: 'U_r' },
      moves: { rating: 'up' },
      compute: (plain) => SHARE * plain.rating,
    },
    { rating: rating.at },
    { id: `${rating.field}/kept`, name: 'keptShare', symbol: 'U_k' },
  );
  const within = line('keptShare', kept, 'makers keep the voltage without ringing within 0.8 of the rating');
  const alone = atMost(plateau, rated, rule);
  const notes = [{ key: 'spikeNotKnown', args: {} }];
  if (alone.outcome === 'fail') return { judgement: { ...alone, others: [within] }, notes };
  const judged = atMost(plateau, within, rule);
  if (judged.outcome === 'pass') return { judgement: { ...judged, others: [rated] }, notes };
  return { judgement: { ...judged, outcome: 'inconclusive', reason: 'unknownValue', headline: false, others: [rated] }, notes };
}
