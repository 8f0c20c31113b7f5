import { noLoad } from '../../table/eu-2019-1782/2019/no-load.ts';
import { noLoad as promisedPower } from '../../table/eu-code-of-conduct/5/no-load.ts';
import { lookUp } from '../../table/look-up.ts';
import { uncertainty } from '../../trace/derived.ts';
import type { Facts } from '../../working/facts.ts';
import { type IdleReading, idlePowers } from '../../working/load/idle-facts.ts';
import { unitNameplate } from '../../working/load/power-facts.ts';
import { atMost, type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Unit extends Subject {
  readonly readings: readonly IdleReading[];
}

const SAME_MAINS = 0.02; // share of the nominal mains within which a reading counts as at the test voltage
const AMERICAN_V = 115; // 10 CFR 430 subpart B appendix Z, test voltage; its figures are the same

/** Does it draw as little with nothing connected as the regulation asks? */
export const idlePower = defineCheck<Unit>({
  id: 'delivery/idle-power',
  consequence: 'disappointing',
  needs: ['idlePower'],
  subjects: ({ bench }) => {
    const readings = idlePowers(bench);
    return readings.length > 0 ? [{ id: 'unit', about: 'the whole unit', readings }] : 'notLooked';
  },
  judge: (facts, { readings }) => {
    const limit = mostPower(facts);
    if (limit === null) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noNameplate', args: {} }] }) };
    const voluntary = voluntaryPower(facts);
    return worstAnswer(readings.map((reading) => judgeOne(reading, limit, voluntary, facts)));
  },
});

function judgeOne(
  { opened, field, value, lastDigit, mains, loaded, event }: IdleReading,
  limit: LimitLine,
  voluntary: readonly LimitLine[],
  facts: Facts,
): Answer {
  if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
  if (value === null) return { judgement: undecided('inconclusive', 'unknownValue', { fields: [field] }) };
  if (loaded)
    return { judgement: undecided('notAssessed', 'notComparable', { fields: [field], notes: [{ key: 'idleLoaded', args: {} }] }) };
  if (mains === null || !isTestMains(mains.value, facts))
    return {
      judgement: undecided('notAssessed', 'notComparable', {
        fields: [field],
        notes: [{ key: 'otherMains', args: { mains: mains?.value ?? 'notStated' } }],
      }),
    };
  const own = { ...atMost(value, limit, facts.setting.decision), others: voluntary };
  const notes = [{ key: 'idleAt', args: { exhibit: event.id, mains: mains.value } }];
  // a display that shows 0.0 W cannot tell 0.1 W from nothing
  const digit = uncertainty(value) === null && value.side === undefined ? (lastDigit ?? 0) : 0;
  const coarse = digit > 0 && limit.at !== null && Math.abs(value.value - limit.at.value) <= digit;
  return { judgement: coarse ? { ...own, outcome: 'inconclusive', reason: 'uncertaintyUnknown', headline: false } : own, notes };
}

function isTestMains(volts: number, { bench, setting }: Facts): boolean {
  const wanted = bench.one.setting.market === 'US' ? [setting.nominal.value, AMERICAN_V] : [setting.nominal.value];
  return wanted.some((one) => Math.abs(volts - one) <= SAME_MAINS * one);
}

/** What makers promised each other for a unit with one output: a line to compare with. */
function voluntaryPower({ bench, levels }: Facts): LimitLine[] {
  const nameplate = bench.one.ports.length > 1 ? null : unitNameplate(levels);
  const cell = nameplate === null ? null : lookUp(promisedPower, nameplate, 'most', 'load/voluntary-idle-power', 'P_0');
  return cell === null ? [] : [limitLine('voluntary', 'atMost', cell)];
}

function mostPower({ bench, levels }: Facts): LimitLine | null {
  const nameplate = unitNameplate(levels);
  const cell =
    nameplate === null
      ? null
      : lookUp(noLoad, nameplate, bench.one.ports.length > 1 ? 'multiple' : 'single', 'load/most-idle-power', 'P_0');
  return cell === null ? null : limitLine('ecodesign', 'atMost', cell);
}
