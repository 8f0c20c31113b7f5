import { derive } from '../../formula/derive.ts';
import { power } from '../../formula/load/power.ts';
import { requiredEfficiency } from '../../formula/load/required-efficiency.ts';
import { cite } from '../../source/source.ts';
import { averageEfficiency as table } from '../../table/eu-2019-1782/2019/average-efficiency.ts';
import { averageEfficiency as voluntary } from '../../table/eu-code-of-conduct/5/average-efficiency.ts';
import { lookUp } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Facts } from '../../working/facts.ts';
import { averageEfficiencyOf, efficiencyAtTenth } from '../../working/load/efficiency-at.ts';
import { levelSix } from '../../working/load/level-six.ts';
import type { Sweep } from '../../working/load/read-sweep.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { atLeast, type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { columnOf, type EfficiencyColumn, LOW_VOLTAGE_BELOW_V } from '../efficiency-column.ts';
import { judgeTogether } from '../judge-together.ts';
import { worstAnswer } from '../worst-answer.ts';

const DECLARED_ABOVE_W = 10; // EU 2019/1782 annex II 2(c): nameplate above which the efficiency at a tenth of the load is declared
const SAME_MAINS = 0.02; // share of the nominal mains within which a run counts as at the test voltage

interface Supplied extends Subject {
  /** Null where several outputs are loaded together. */
  readonly level: LevelFacts | null;
}

/** Is the average efficiency at a quarter, half, three quarters and all of the claimed current what the regulation asks? */
export const efficiency = defineCheck<Supplied>({
  id: 'delivery/efficiency',
  consequence: 'disappointing',
  needs: ['sweepWithInput'],
  subjects: ({ bench, levels }) => {
    if (levels.length === 0) return 'notLooked';
    // a unit with several outputs is measured with all of them loaded
    if (bench.one.ports.length > 1) return [{ id: 'together', about: 'all outputs together', level: null }];
    return levels.map((level) => ({ id: level.id, about: level.about, level }));
  },
  judge: (facts, { level }) =>
    level === null
      ? judgeTogether(facts, { isTestMains: (sweep) => isTestMains(sweep, facts), leastOf: leastEfficiency })
      : besideLevelSix(judgeEcodesign(facts, level), facts, level),
});

function isTestMains({ mains }: Sweep, { setting }: Pick<Facts, 'setting'>): boolean {
  return mains !== null && Math.abs(mains.value - setting.nominal.value) <= SAME_MAINS * setting.nominal.value;
}

function judgeEcodesign({ setting }: Facts, level: LevelFacts): Answer {
  const { claim, window } = level;
  if (claim === null || claim.value <= 0 || window === null)
    return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noClaim', args: {} }] }) };
  const withInput = level.nearest.filter(({ sweep }) => sweep.rows.some(({ inputPower }) => inputPower !== null));
  if (withInput.length === 0) return { judgement: undecided('notAssessed', 'notLooked') };
  const at = `load/${level.port.id}/${level.level.id}`;
  const nameplate = derive(power, { voltage: window.nominal, current: claim }, `${at}/nameplate-power`);
  const limit = leastEfficiency(nameplate, columnOf(window.nominal.value, claim.value), at);
  if (limit === null) return { judgement: undecided('notAssessed', 'limitUnknown') };
  return worstAnswer(
    withInput.map(({ sweep }): Answer => {
      if (!isTestMains(sweep, { setting }))
        return {
          judgement: undecided('notAssessed', 'notComparable', {
            notes: [{ key: 'otherMains', args: { mains: sweep.mains?.value ?? 'notStated' } }],
          }),
        };
      const average = averageEfficiencyOf(sweep, claim);
      if ('missing' in average)
        return {
          judgement: undecided('notAssessed', 'outOfRange', { notes: [{ key: 'loadPointMissing', args: { point: average.missing } }] }),
        };
      // more out than in: one of the meters, or what they were clipped to, is wrong
      if (average.value > 1) return { judgement: undecided('inconclusive', 'contradicted', { measured: average }), show: 'percent' };
      const judgement = atLeast(average, limitLine('ecodesign', 'atLeast', limit), setting.decision);
      const tenth = nameplate.value > DECLARED_ABOVE_W ? efficiencyAtTenth(sweep, claim) : null;
      return {
        judgement: { ...judgement, others: voluntaryLines(nameplate, window.nominal.value, at) },
        show: 'percent',
        notes: tenth === null ? [] : [{ key: 'efficiencyAtTenth', args: { efficiency: tenth } }],
      };
    }),
  );
}

/** On the American market the level VI of 10 CFR 430 stands beside it: shown, not deciding. */
function besideLevelSix(answer: Answer, { bench }: Facts, level: LevelFacts): Answer {
  const six = bench.one.setting.market === 'US' ? levelSix(level) : null;
  if (six === null) return answer;
  const at = `load/${level.port.id}/${level.level.id}/level-six`;
  const nameplate = derive(power, { voltage: six.nominal, current: six.current }, `${at}/nameplate-power`);
  const least = leastEfficiency(nameplate, columnOf(six.nominal.value, six.current.value), at);
  if (least === null) return answer;
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

function leastEfficiency(nameplate: Derived, column: EfficiencyColumn, at: string): Derived | null {
  const [a, b, c] = (['A', 'B', 'C'] as const).map((letter) =>
    lookUp(table, nameplate, `${column}${letter}`, `${at}/efficiency-${letter.toLowerCase()}`, letter.toLowerCase()),
  );
  return a == null || b == null || c == null ? null : derive(requiredEfficiency, { power: nameplate, a, b, c }, `${at}/least-efficiency`);
}

/** What makers promised each other above 6 V: a line to compare with. */
function voluntaryLines(nameplate: Derived, volts: number, at: string): LimitLine[] {
  if (volts < LOW_VOLTAGE_BELOW_V) return [];
  const [a, b, c] = (['a', 'b', 'c'] as const).map((letter) => lookUp(voluntary, nameplate, letter, `${at}/voluntary-${letter}`, letter));
  if (a == null || b == null || c == null) return [];
  return [limitLine('voluntary', 'atLeast', derive(requiredEfficiency, { power: nameplate, a, b, c }, `${at}/voluntary-efficiency`))];
}
