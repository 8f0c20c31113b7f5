import type { StepNode } from '../trace/step.ts';
import type { ColdPair, ColdReading } from '../working/cold/cold-facts.ts';
import type { StrengthLimits } from '../working/insulation/strength-limits.ts';
import { atLeast, type DecisionRule, type LimitLine, limitLine } from './decide.ts';
import type { Answer } from './define-check.ts';
import { judgeState } from './judge-state.ts';

interface StrengthAnswers {
  readonly answers: readonly Answer[];
  readonly notes: NonNullable<Answer['notes']>;
  readonly beside: readonly StepNode[];
}

/**
 * How an insulation bore a high voltage. Breaking down below what is asked is a failure; bearing it dry and at room temperature is no pass of
 * the standard, so it is only told. What a laboratory would put across stands beside every reading.
 */
export function judgeStrength(pair: ColdPair, limits: StrengthLimits | null, rule: DecisionRule): StrengthAnswers {
  if (limits === null || pair.insulation === null) return { answers: [], notes: [], beside: [] };
  const asked = pair.insulation === 'basic' ? limits.basic : limits.reinforced;
  const tests = pair.readings.filter(({ strength }) => strength !== undefined);
  return {
    answers: tests.flatMap((reading) => judgeOne(reading, pair.insulation === 'basic', limits, rule)),
    notes: [
      { key: 'strengthAsked', args: { asked: asked.value } },
      ...tests.flatMap(({ value, strength }) =>
        value === null || strength?.outcome !== 'held'
          ? []
          : [{ key: value.value >= asked.value ? 'strengthHeld' : 'strengthHeldLess', args: { volts: value.value, asked: asked.value } }],
      ),
    ],
    beside: [asked.step],
  };
}

function judgeOne(
  { opened, field, value, strength }: ColdReading,
  basicOnly: boolean,
  limits: StrengthLimits,
  rule: DecisionRule,
): Answer[] {
  if (opened.state !== 'read' || value === null) return [{ judgement: judgeState(opened, field) }];
  if (strength?.outcome === 'held') return [];
  const line = (name: 'basic' | 'reinforced'): LimitLine => limitLine(`${name}Strength`, 'atLeast', limits[name]);
  // it gave way at this voltage, perhaps sooner: a ceiling, which can only fail
  const bound = { ...value, side: 'below', step: { ...value.step, side: 'below', u: null } } as const;
  const others = limits.others[basicOnly ? 'basic' : 'reinforced'].map(({ name, at }) => limitLine(name, 'atLeast', at));
  const notes = [{ key: 'strengthBroke', args: { volts: value.value } }];
  const basic = atLeast(bound, line('basic'), rule);
  if (basic.outcome === 'fail' || basicOnly)
    return [{ judgement: { ...basic, others }, rung: basic.outcome === 'fail' ? 'belowBasic' : 'undecided', consequence: 'lethal', notes }];
  const judgement = { ...atLeast(bound, line('reinforced'), rule), others: [line('basic'), ...others] };
  return judgement.outcome === 'fail'
    ? [{ judgement, rung: 'basicNotReinforced', consequence: 'injurious', notes }]
    : [{ judgement, rung: 'undecided', notes }];
}
