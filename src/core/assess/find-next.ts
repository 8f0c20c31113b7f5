import type { AnyCheck } from '../check/define-check.ts';
import { FAILURES, type Finding, HAZARDS, type Next, type Reason, type Verdict } from '../result/assessment.ts';
import type { Facts } from '../working/facts.ts';
import type { StopLimit } from '../working/stop/stop-limits.ts';
import { WORD, worseWord, worstOf } from './judge-verdict.ts';
import { benchCheck, toAmount } from './to-finding.ts';

/** What each kind of evidence costs the person: hazards of taking it, as keys for the words. */
const HAZARDS_OF: Readonly<Record<string, readonly string[]>> = {
  distanceAir: ['discharge', 'sampleOpened'],
  distanceSurface: ['discharge', 'sampleOpened'],
  bridgingParts: ['discharge', 'sampleOpened'],
  firstPart: ['discharge', 'sampleOpened'],
  circuit: ['discharge', 'sampleOpened'],
  circuitRun: [],
  faultRun: [],
  touchBothWays: ['liveOutput', 'directSupply'],
  spotOutside: ['hot', 'neverLeave'],
  soakLogged: ['hot', 'neverLeave', 'mainsOnThermocouple'],
  spotWinding: ['hot', 'neverLeave', 'mainsOnThermocouple'],
  sweep: ['hot', 'venting', 'outputToEarthFirst'],
  sweepWithInput: ['hot', 'venting', 'outputToEarthFirst'],
  coldInsulation: ['discharge'],
  enclosure: ['discharge'],
  plug: [],
  plugDischarge: ['liveMains'],
  capacitorValues: ['discharge', 'sampleOpened'],
  workmanship: ['discharge', 'sampleOpened'],
  spotMaterial: ['hot', 'neverLeave', 'mainsOnThermocouple'],
  spotParts: ['hot', 'neverLeave', 'mainsOnThermocouple'],
  inrushParts: ['discharge', 'sampleOpened'],
  bulkCapacitor: ['discharge', 'sampleOpened'],
  label: [],
  advertised: ['hot', 'venting', 'outputToEarthFirst'],
  sweepAtEnds: ['hot', 'venting', 'outputToEarthFirst'],
  transient: ['outputToEarthFirst'],
  idlePower: [],
  sweepBeyond: ['hot', 'venting', 'outputToEarthFirst'],
  portsTogether: ['hot', 'venting', 'outputToEarthFirst'],
  short: ['hot', 'neverLeave', 'venting'],
  idleAndStarts: ['outputToEarthFirst'],
  stack: ['discharge', 'sampleOpened'],
  optocoupler: ['discharge', 'sampleOpened'],
  workingVoltage: ['liveMains'],
};

/** Reasons that another measurement can settle. What cannot be done any more is never proposed again. */
const SETTLED_BY_MEASURING: ReadonlySet<Reason> = new Set([
  'notLooked',
  'withinUncertainty',
  'uncertaintyUnknown',
  'oneSided',
  'branchesDisagree',
  'notComparable',
  'refusedEvidence',
  'struck',
  'outOfRange',
  'unknownValue',
]);

/** What to measure next, the measurement that could change the verdict most first. */
export function findNext(
  checks: readonly AnyCheck[],
  findings: readonly Finding[],
  verdict: Verdict,
  stops: { readonly load: readonly StopLimit[]; readonly heat: readonly StopLimit[] },
  givenUp: ReadonlyMap<string, unknown>,
): Next[] {
  const byNeed = new Map<string, { checks: string[]; about: Set<string> }>();
  for (const check of checks) {
    const own = findings.filter((finding) => finding.check === check.id);
    const open = own.filter(
      ({ outcome, reason }) => (outcome === 'notAssessed' || outcome === 'inconclusive') && SETTLED_BY_MEASURING.has(reason),
    );
    const [need] = check.needs;
    if (open.length === 0 || need === undefined || givenUp.has(need) || worstOf(own).outcome === 'fail') continue;
    const entry = byNeed.get(need) ?? { checks: [], about: new Set<string>() };
    entry.checks.push(check.id);
    for (const { about } of open) if (about !== null) entry.about.add(about);
    byNeed.set(need, entry);
  }
  const best = verdict.failure === 'No verdict yet' && verdict.doubtful === null ? 'Nothing found wrong' : verdict.failure;
  return [...byNeed.entries()]
    .map(([need, entry]): Next => {
      const words = entry.checks.map((id) => WORD[benchCheck(id).worst]).filter((word) => word !== null);
      const worst = words.reduce(worseWord, verdict.failure);
      const before =
        entry.checks.map((id) => benchCheck(id).before).find((one) => one === 'opening') ??
        entry.checks.map((id) => benchCheck(id).before).find((one) => one !== undefined) ??
        null;
      return {
        id: need,
        measure: need,
        about: [...entry.about],
        settles: entry.checks,
        best,
        worst,
        hazard: [...(HAZARDS_OF[need] ?? [])],
        stop: stopsOf(need, stops),
        before,
      };
    })
    .sort((a, b) => FAILURES.indexOf(a.worst) - FAILURES.indexOf(b.worst) || hazardRank(a) - hazardRank(b) || (a.id < b.id ? -1 : 1));
}

/** Stop limits belong to tests that load the output or let it get hot. */
function stopsOf(need: string, stops: { readonly load: readonly StopLimit[]; readonly heat: readonly StopLimit[] }): Next['stop'] {
  const hazards = HAZARDS_OF[need] ?? [];
  const own = [...(hazards.includes('venting') ? stops.load : []), ...(hazards.includes('hot') ? stops.heat : [])];
  return own.map(({ of, about, at }) => ({ of, about, at: toAmount(at), step: at.step.id }));
}

function hazardRank(next: Next): number {
  return Math.min(...next.settles.map((id) => HAZARDS.indexOf(benchCheck(id).hazard)));
}

const POINTS = ['opening', 'desoldering', 'unwinding'] as const;
const PASSED_BY = {
  opening: ['opened', 'desoldered', 'unwound', 'destroyed'],
  desoldering: ['desoldered', 'unwound', 'destroyed'],
  unwinding: ['unwound', 'destroyed'],
} as const;

/** Before each point of no return that still lies ahead: what can only be measured now. A measurement stands before the first point that takes it away. */
export function findLastChance(facts: Facts, next: readonly Next[]): { before: (typeof POINTS)[number]; measure: string[] }[] {
  const done = new Set<string>(facts.bench.one.events.map(({ what }) => what));
  const ahead = POINTS.filter((point) => !PASSED_BY[point].some((event) => done.has(event)));
  const reopened = !ahead.includes('opening'); // a case that was opened can be closed again until the board is taken apart
  return ahead.map((point) => ({
    before: point,
    measure: next
      .filter(({ before }) => before === point || (point === 'desoldering' && reopened && before === 'opening'))
      .map(({ measure }) => measure),
  }));
}
