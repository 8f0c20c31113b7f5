import { campaignKey } from '../../core/assess/circuit-keys.ts';
import {
  CAMPAIGN_FORMAT,
  CAMPAIGN_RECIPE,
  type FaultCampaign,
  type FaultKept,
  type FaultOutcome,
} from '../../core/evidence/computed/fault-campaign.ts';
import { findLevel, harmOf } from '../../core/model/choices.ts';
import { faultsOf } from '../../core/model/faults-of.ts';
import { toRefusals } from '../../core/model/missing-text.ts';
import { FAULT_LOADS, planFaults, planPoint, tolerating } from '../../core/model/plans.ts';
import { looksOf } from '../../core/model/probes-of.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { type CampaignPlan, type FaultResult, worstByFault } from '../../core/solver/campaign.ts';
import { type Fault, faultId } from '../../core/solver/fault.ts';
import type { FaultLines, FaultLook } from '../../core/solver/fault-lines.ts';
import { openBench } from '../../core/working/bench/bench.ts';
import { gatherFacts } from '../../core/working/facts.ts';
import { runCampaign } from '../../solver-pool/run-campaign.ts';
import { isPoint, isRefusals, runPoints } from '../../solver-pool/run-points.ts';
import { runJobs } from '../../solver-pool/worker-pool.ts';
import type { OpenCase } from '../open-case.ts';
import { type KeptRun, keptRun } from './kept-run.ts';
import { type RunOptions, toKeptAssumption, toLines } from './simulate-circuit.ts';

type LoadName = FaultOutcome['load'];
const HOTTER_KEPT = 3;
const HOTTER_BY_W = 0.05;
/** Faults whose lines are kept: the worst; all others can be run again by themselves. */
const LINES_KEPT = 6;
const LINE_POINTS = 240;

/** Runs every single fault of the traced circuit at three loads. Null when it was stopped. */
export async function runFaults(
  open: Pick<OpenCase, 'one' | 'tables'>,
  options: RunOptions,
): Promise<KeptRun<FaultCampaign> | null | Refusal[]> {
  const prepared = prepareFaults(open, options.level);
  if (Array.isArray(prepared)) return prepared;
  const { facts, level, planned, list, key } = prepared;
  const { model, mains } = planned;
  const signal = options.signal === undefined ? {} : { signal: options.signal };
  const total = FAULT_LOADS.length + list.run.length * FAULT_LOADS.length + LINES_KEPT;
  const tell = (done: number): void => options.onProgress?.(Math.min(done, total), total);
  tell(0);
  const points = FAULT_LOADS.map(({ name, load }) => planPoint(model, { id: name, mains: 'high', load }, mains));
  const healthy = await runPoints(
    points.map(({ plan }) => plan),
    { workers: options.workers, ...signal, onResult: (_, done) => tell(done) },
  );
  const refused = healthy.flatMap((one) => (isRefusals(one) ? one : []));
  if (refused.length > 0) return refused;
  const well = healthy.filter(isPoint);
  if (well.length < FAULT_LOADS.length) return null;
  const broken = well.find(({ outcome }) => outcome !== 'completed');
  if (broken !== undefined)
    return [refuse('healthy-does-not-run', broken.outcome, 'a healthy circuit that runs before its faults are tried', { place: '/parts' })];
  const tolerated = [
    ...new Set(
      well.flatMap(({ findings, startFindings }) =>
        [...findings, ...startFindings].flatMap(({ code, ref }) => (code === 'breakdown' || code === 'ratingExceeded' ? [ref] : [])),
      ),
    ),
  ].sort();
  const plan: CampaignPlan = { ...planned.plan, circuit: tolerating(planned.plan.circuit, new Set(tolerated)) };
  const jobs = FAULT_LOADS.flatMap(({ name }) => list.run.map((fault) => ({ load: name, fault })));
  const campaign = await runCampaign(plan, jobs, {
    workers: options.workers,
    ...signal,
    onResult: (_, done) => tell(FAULT_LOADS.length + done),
  });
  const results = campaign.results.flatMap((one) => one ?? []);
  if (campaign.cancelled || results.length < jobs.length) return null;
  const worst = await linesOfWorst(plan, model, results, list.run, options);
  if (worst === null) return null;
  return keptRun(`faults-${level.id}`, {
    format: CAMPAIGN_FORMAT,
    recipe: CAMPAIGN_RECIPE,
    key,
    level: { ...level },
    mains: { ...mains },
    harmV: harmOf(facts, level),
    assumptions: model.assumptions.map(toKeptAssumption),
    leftOut: [...model.leftOut],
    fuses: [...model.fuses],
    tripKnown: model.tripKnown,
    tolerated,
    healthy: FAULT_LOADS.map(({ name }, index) => ({
      load: name,
      outputV: well[index]!.probes['output']?.mean ?? null,
      inputW: well[index]!.inputW,
      touchRmsA: well[index]!.probes['touch']?.rms ?? null,
    })),
    faults: list.run.map(toKeptFault),
    results: withDraining(
      results,
      results.map((result) => toOutcome(result, well[FAULT_LOADS.findIndex(({ name }) => name === result.load)]!.lossW)),
    ),
    acrossBarrier: list.acrossBarrier.map(toKeptFault),
    certified: list.certified.map(toKeptFault),
    worst,
  } satisfies FaultCampaign);
}

/** Everything a campaign needs before it runs; also what one of its faults needs to be run again. */
export function prepareFaults(open: Pick<OpenCase, 'one' | 'tables'>, asked: string | null) {
  const facts = gatherFacts(openBench(open.one, open.tables));
  const level = findLevel(facts, asked);
  if (isRefusal(level)) return [level];
  const planned = planFaults(facts, level, harmOf(facts, level));
  if ('because' in planned) return toRefusals(planned);
  const list = faultsOf(planned.model, facts.bench, facts.circuit!.recognised.graph.sideOf);
  return { facts, level, planned, list, key: campaignKey(planned, list.run.map(faultId)) };
}

/** Lines of the faults that end worst, each at its worst load. */
async function linesOfWorst(
  plan: CampaignPlan,
  model: Parameters<typeof looksOf>[0],
  results: readonly FaultResult[],
  faults: readonly Fault[],
  { workers, signal }: RunOptions,
): Promise<FaultCampaign['worst'] | null> {
  const chosen = worstByFault(plan, results)
    .filter(({ state }) => state !== 'regulates' && state !== 'dead')
    .sort((a, b) => (b.outputMostV ?? 0) - (a.outputMostV ?? 0) || (a.id < b.id ? -1 : 1))
    .slice(0, LINES_KEPT);
  const looks = chosen.map((one) =>
    lookOf(plan, model, faults.find((fault) => faultId(fault) === one.id)!, one.load as LoadName, one.simulatedS),
  );
  const lines = await runJobs<{ look: FaultLook }, FaultLines>(
    'run-look',
    looks.map((look) => ({ look })),
    {
      workers,
      ...(signal === undefined ? {} : { signal }),
    },
  );
  if (lines.includes(null)) return null;
  return chosen.map(({ id, load }, index) => ({
    fault: id,
    load: load as LoadName,
    waveform: toLines(looksOf(model), lines[index]!, 'mains')!,
  }));
}

export function lookOf(plan: CampaignPlan, model: Parameters<typeof looksOf>[0], fault: Fault, load: LoadName, seconds: number): FaultLook {
  return { plan, job: { load, fault }, probes: looksOf(model).map(({ probe }) => probe), seconds, points: LINE_POINTS };
}

/**
 * With next to no load a converter that stands still keeps its output for seconds. Where a fault gives nothing at full load, and nothing
 * switches at a lighter one either, the output drains.
 */
function withDraining(results: readonly FaultResult[], outcomes: readonly FaultOutcome[]): FaultOutcome[] {
  const dead = new Set(outcomes.flatMap(({ fault, load, state }) => (load === 'full' && state === 'dead' ? [fault] : [])));
  return outcomes.map((one, index) =>
    dead.has(one.fault) && one.state === 'stillMoving' && results[index]!.rests ? { ...one, state: 'drains' } : one,
  );
}

function toKeptFault(fault: Fault): FaultKept {
  const pins = fault.mode === 'short' ? [...fault.pins] : fault.mode === 'open' ? [fault.pin] : [];
  return { id: faultId(fault), ref: fault.ref, mode: fault.mode, pins };
}

function toOutcome(result: FaultResult, healthyW: Readonly<Record<string, number>>): FaultOutcome {
  const { settled } = result;
  const hotter = Object.entries(settled?.lossW ?? {})
    .filter(([part]) => part !== 'load' && !part.includes('/'))
    .map(([part, watts]) => ({ part, watts, healthyW: healthyW[part] ?? 0 }))
    .filter((one) => one.watts - one.healthyW > HOTTER_BY_W)
    .sort((a, b) => b.watts - b.healthyW - (a.watts - a.healthyW) || (a.part < b.part ? -1 : 1))
    .slice(0, HOTTER_KEPT);
  return {
    fault: result.id,
    load: result.load as LoadName,
    state: result.state,
    outcome: result.outcome,
    simulatedS: result.simulatedS,
    outputMostV: result.outputMostV,
    aboveHarmS: result.aboveHarmS,
    touchRmsA: result.touchRmsA,
    settled: settled === null ? null : { outputV: settled.outputV, inputW: settled.inputW },
    hotter,
    slopeVPerS: result.slopeVPerS,
    findings: [...result.findings],
    balanced: result.balanced,
  };
}
