import { cite } from '../../source/source.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { TransformerFacts } from '../../working/transformer/transformer-facts.ts';
import { blockedBy, type Wound, woundOf } from '../blocked.ts';
import { atMost, type LimitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';

const MOST_SHARE = 0.05; // of what the core passes; a convention of this project, no publication gives one

/** Is the heat in the copper, hot and at the current limit, a small share of what the transformer passes? */
export const windingLoss = defineCheck<Wound>({
  id: 'fire/winding-loss',
  consequence: 'injurious',
  needs: ['stack'],
  subjects: ({ transformers }) => woundOf(transformers),
  judge: ({ setting }, { facts }) => {
    const share = shareLost(facts);
    if (share === null) {
      const missing = [...new Set(facts.losses.flatMap(({ missing: own }) => own))];
      if (facts.capabilities.length === 0) return blockedBy(facts, 'mostAtNominal');
      return { judgement: undecided('notAssessed', 'notLooked'), notes: missing.map((what) => ({ key: 'numberMissing', args: { what } })) };
    }
    const source = cite('house', 'copper loss at most 5 % of the power that the core passes', 'common-practice');
    const at = given('constant', MOST_SHARE, '1', {
      id: 'transformer/most-copper-loss',
      name: 'mostCopperLoss',
      symbol: 'k',
      show: 'percent',
      source,
    });
    const limit: LimitLine = { name: 'copperHabit', kind: 'atMost', at, source, grade: 'common-practice' };
    // without a published limit it never weighs more than this (docs/decisions/0003-verdict.md)
    return { judgement: atMost(share, limit, setting.decision), consequence: 'disappointing', show: 'percent' };
  },
});

/** Heat of primary and secondary over the power at nominal mains. */
function shareLost({ losses, turns, capabilities, stack }: TransformerFacts): Derived | null {
  const power = capabilities.find(({ which }) => which === 'nominal')?.power;
  const wanted = [...turns.primaries, ...(turns.secondary === null ? [] : [turns.secondary])];
  const own = wanted.map((winding) => losses.find((one) => one.winding === winding)?.loss ?? null);
  if (power === undefined || turns.secondary === null || own.includes(null)) return null;
  const named: Record<string, Derived> = { power, ...Object.fromEntries(own.map((loss, index) => [`p${index + 1}`, loss!])) };
  return combine(
    {
      kind: 'reduce',
      unit: '1',
      formula: null,
      symbols: { power: 'P', ...Object.fromEntries(own.map((_, index) => [`p${index + 1}`, `P_${index + 1}`])) },
      compute: ({ power: all, ...heats }) => Object.values(heats).reduce((sum, one) => sum + one, 0) / (all ?? 1),
    },
    named,
    { id: `transformer/${stack.part.id}/share-lost`, name: 'shareLost', symbol: 'k', show: 'percent' },
  );
}
