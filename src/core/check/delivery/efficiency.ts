import { derive } from '../../formula/derive.ts';
import { power } from '../../formula/load/power.ts';
import { requiredEfficiency } from '../../formula/load/required-efficiency.ts';
import { cite } from '../../source/source.ts';
import { averageEfficiency as table } from '../../table/eu-2019-1782/2019/average-efficiency.ts';
import { lookUp } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Facts } from '../../working/facts.ts';
import { averageEfficiencyOf } from '../../working/load/efficiency-at.ts';
import { levelSix } from '../../working/load/level-six.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { atLeast, type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { worstAnswer } from '../worst-answer.ts';

const LOW_VOLTAGE_BELOW_V = 6; // EU 2019/1782 annex I: nameplate below 6 V ...
const LOW_VOLTAGE_FROM_A = 0.55; // ... and at least 0.55 A
const SAME_MAINS = 0.02; // share of the nominal mains within which a run counts as at the test voltage

/** Is the average efficiency at a quarter, half, three quarters and all of the claimed current what the regulation asks? */
export const efficiency = defineCheck<LevelFacts>({
  id: 'delivery/efficiency',
  consequence: 'disappointing',
  needs: ['sweepWithInput'],
  subjects: ({ levels }) => (levels.length > 0 ? levels : 'notLooked'),
  judge: (facts, level) => besideLevelSix(judgeEcodesign(facts, level), facts, level),
});

function judgeEcodesign({ bench, setting }: Facts, level: LevelFacts): Answer {
  const { claim, window } = level;
  if (claim === null || claim.value <= 0 || window === null)
    return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noClaim', args: {} }] }) };
  const withInput = level.nearest.filter(({ sweep }) => sweep.rows.some(({ inputPower }) => inputPower !== null));
  if (withInput.length === 0) return { judgement: undecided('notAssessed', 'notLooked') };
  // several outputs at a time have a column of their own and are measured loaded together
  if (bench.one.ports.length > 1)
    return { judgement: undecided('notAssessed', 'notImplemented', { notes: [{ key: 'severalOutputs', args: {} }] }) };
  const limit = leastEfficiency(level, window.nominal, claim);
  if (limit === null) return { judgement: undecided('notAssessed', 'limitUnknown') };
  return worstAnswer(
    withInput.map(({ sweep }): Answer => {
      const mains = sweep.mains?.value;
      if (mains === undefined || Math.abs(mains - setting.nominal.value) > SAME_MAINS * setting.nominal.value)
        return {
          judgement: undecided('notAssessed', 'notComparable', { notes: [{ key: 'otherMains', args: { mains: mains ?? 'notStated' } }] }),
        };
      const average = averageEfficiencyOf(sweep, claim);
      if ('missing' in average)
        return {
          judgement: undecided('notAssessed', 'outOfRange', { notes: [{ key: 'loadPointMissing', args: { point: average.missing } }] }),
        };
      // more out than in: one of the meters, or what they were clipped to, is wrong
      if (average.value > 1) return { judgement: undecided('inconclusive', 'contradicted', { measured: average }), show: 'percent' };
      return { judgement: atLeast(average, limitLine('ecodesign', 'atLeast', limit), setting.decision), show: 'percent' };
    }),
  );
}

/** On the American market the level VI of 10 CFR 430 stands beside it: shown, not deciding. */
function besideLevelSix(answer: Answer, { bench }: Facts, level: LevelFacts): Answer {
  const six = bench.one.setting.market === 'US' && bench.one.ports.length === 1 ? levelSix(level) : null;
  const least = six === null ? null : leastEfficiency(level, six.nominal, six.current, `load/${level.port.id}/${level.level.id}/level-six`);
  if (six === null || least === null) return answer;
  const source = cite('us-10cfr430', 'level VI, tested by appendix Z at 115 V 60 Hz', 'secondary', {
    alsoBy: ['a copy of the federal regulations', 'a public list of the figures'],
  });
  const line: LimitLine = { name: 'levelSix', kind: 'atLeast', at: least, source, grade: 'secondary' };
  const note = { key: 'levelSix', args: { exhibit: six.exhibit, average: six.average.value, least: least.value, points: six.points } };
  return {
    ...answer,
    judgement: { ...answer.judgement, others: [...answer.judgement.others, line] },
    beside: [...(answer.beside ?? []), six.average.step],
    notes: [...(answer.notes ?? []), note],
  };
}

function leastEfficiency(
  level: LevelFacts,
  nominal: Derived,
  claim: Derived,
  at = `load/${level.port.id}/${level.level.id}`,
): Derived | null {
  const nameplate = derive(power, { voltage: nominal, current: claim }, `${at}/nameplate-power`);
  const column = nominal.value < LOW_VOLTAGE_BELOW_V && claim.value >= LOW_VOLTAGE_FROM_A ? 'low' : 'basic';
  const [a, b, c] = (['A', 'B', 'C'] as const).map((letter) =>
    lookUp(table, nameplate, `${column}${letter}`, `${at}/efficiency-${letter.toLowerCase()}`, letter.toLowerCase()),
  );
  return a == null || b == null || c == null ? null : derive(requiredEfficiency, { power: nameplate, a, b, c }, `${at}/least-efficiency`);
}
