import { isRefusal, type Refusal } from '../quantity/refusal.ts';
import type { Circuit } from './circuit.ts';
import type { Outcome, Probe, ProbeResult, RunFinding, Snapshot, SolverRequest, SolverResult } from './request.ts';
import { Run } from './run.ts';
import { simulate, toResult } from './simulate.ts';
import { validateRequest } from './validate-request.ts';

/** A healthy circuit at one load: run in equal windows until they are alike, then looked at closely. Plain data, for a worker. */
export interface PointPlan {
  readonly circuit: Circuit;
  readonly start: 'given' | Snapshot;
  /** Watched throughout; the first two are output voltage and current of the source. */
  readonly probes: readonly Probe[];
  readonly source: string;
  /** Two windows are alike when the first probe's means differ by less than this share of it. */
  readonly nominalV: number;
  readonly windowS: number;
  readonly mostS: number;
  readonly most: SolverRequest['most'];
  /** Points of a waveform over one window, and over a few periods of switching: how long those are, seconds. */
  readonly points: number;
  readonly closeS: number;
}
export interface Waveform {
  readonly timeS: readonly number[];
  /** By probe, in their order. */
  readonly values: readonly (readonly number[])[];
}
export interface PointResult {
  readonly outcome: Outcome;
  /** Whether three windows in a row were alike; without it the means are of something that still moves. */
  readonly settled: boolean;
  readonly simulatedS: number;
  readonly probes: Readonly<Record<string, ProbeResult | null>>;
  readonly lossW: Readonly<Record<string, number>>;
  readonly inputW: number;
  readonly pulses: number;
  /** Starts of the controllers during the last look: more than none is a unit that stops and tries again. */
  readonly starts: number;
  /** In the settled look; and on the way there, from a start that is not a real one. */
  readonly findings: readonly RunFinding[];
  readonly startFindings: readonly RunFinding[];
  readonly imbalance: number;
  readonly balanced: boolean;
  readonly waveform: Waveform | null;
  readonly close: Waveform | null;
  readonly end: Snapshot;
}

/** House choices: how alike two windows must be, as shares; and how often. */
const ALIKE = 0.003;
const ALIKE_POWER = 0.02;
const LEAST_W = 0.02;
const IN_A_ROW = 3;
/** Windows over which means are taken when nothing settles (a burst, a hiccup). */
const LAST = 4;

export function runPoint(
  plan: PointPlan,
  watch: { cancelled?: () => boolean; progress?: (share: number) => void } = {},
): PointResult | readonly Refusal[] {
  const request: SolverRequest = {
    circuit: plan.circuit,
    start: plan.start,
    stopS: plan.windowS,
    fromS: 0,
    probes: plan.probes,
    accuracy: 'report',
    most: plan.most,
    endAtRating: false,
    ...(watch.cancelled === undefined ? {} : { cancelled: watch.cancelled }),
  };
  const refusals = validateRequest(request);
  if (refusals.length > 0) return refusals;
  // settled as a campaign settles, with one probe; what is reported comes from a look that follows every event closely
  const quick: SolverRequest = { ...request, probes: plan.probes.slice(0, 1), accuracy: 'screening' };
  const run = new Run(quick);
  const results: SolverResult[] = [];
  const windows = Math.max(IN_A_ROW, Math.ceil(plan.mostS / plan.windowS));
  let settled = false;
  let outcome: Outcome = 'completed';
  for (let index = 0; index < windows && !settled && outcome === 'completed'; index += 1) {
    const begin = run.tick;
    outcome = run.forward(plan.windowS, 0);
    results.push(toResult(quick, run, outcome, begin));
    settled = outcome === 'completed' && results.length >= IN_A_ROW && areAlike(plan, results.slice(-IN_A_ROW));
    watch.progress?.((index + 1) / (windows + 1));
  }
  const before = results.at(-1)!;
  const seconds = settled ? plan.windowS : LAST * plan.windowS;
  const last = outcome === 'completed' ? look(request, before, seconds, plan.points) : before;
  const close = last.outcome === 'completed' ? look(request, last, plan.closeS, plan.points).waveform : null;
  const all = [...results, last];
  return {
    outcome: last.outcome,
    settled,
    simulatedS: all.reduce((sum, { reachedS }) => sum + reachedS, 0),
    probes: Object.fromEntries(plan.probes.map(({ id }) => [id, knownValue(last.probes[id])])),
    lossW: last.lossW,
    inputW: last.sourceW[plan.source] ?? 0,
    pulses: sumOf(last, 'pulses') - sumOf(before, 'pulses'),
    starts: sumOf(last, 'starts') - sumOf(before, 'starts'),
    findings: last.findings,
    startFindings: before.findings,
    imbalance: Math.max(...all.map(({ energy }) => Math.abs(energy.imbalance))),
    balanced: all.every(({ energy }) => energy.balanced),
    waveform: last.outcome === 'completed' ? fromZero(last.waveform) : null,
    close: fromZero(close),
    end: last.end,
  };
}

/** The circuit from where it stands on, with every probe and a line of points. */
function look(request: SolverRequest, from: SolverResult, seconds: number, points: number): SolverResult {
  const result = simulate({ ...request, start: from.end, stopS: seconds, waveform: { spacingS: seconds / points, fromS: 0 } });
  if (Array.isArray(result))
    throw new Error(
      result
        .filter(isRefusal)
        .map((one) => JSON.stringify(one))
        .join('\n'),
    );
  return result as SolverResult;
}

const knownValue = (value: SolverResult['probes'][string] | undefined): ProbeResult | null =>
  value === undefined || 'because' in value ? null : value;

const sumOf = ({ controllers }: SolverResult, key: 'pulses' | 'starts'): number =>
  Object.values(controllers).reduce((total, one) => total + one[key], 0);

function fromZero(waveform: Waveform | null): Waveform | null {
  const begin = waveform?.timeS[0] ?? 0;
  return waveform === null ? null : { timeS: waveform.timeS.map((at) => at - begin), values: waveform.values };
}

function areAlike(plan: PointPlan, looks: readonly SolverResult[]): boolean {
  const [first] = plan.probes;
  const values = looks.map(({ probes, sourceW }) => {
    const out = probes[first!.id];
    return out === undefined || 'because' in out ? null : { volts: out.mean, most: out.most, watts: sourceW[plan.source] ?? 0 };
  });
  if (values.includes(null)) return false;
  const spread = (pick: (one: NonNullable<(typeof values)[number]>) => number): number => {
    const all = values.map((one) => pick(one!));
    return Math.max(...all) - Math.min(...all);
  };
  const watts = Math.max(...values.map((one) => one!.watts));
  return (
    spread(({ volts }) => volts) < ALIKE * plan.nominalV &&
    spread(({ most }) => most) < ALIKE_POWER * plan.nominalV &&
    spread((one) => one.watts) < ALIKE_POWER * watts + LEAST_W
  );
}
