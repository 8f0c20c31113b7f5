import { simulationKey } from '../../core/assess/circuit-keys.ts';
import type { RunWaveform } from '../../core/evidence/computed/circuit-run.ts';
import { type OperatingPoint, SIMULATION_FORMAT, SIMULATION_RECIPE, type Simulation } from '../../core/evidence/computed/simulation.ts';
import type { Assumption } from '../../core/model/assumed.ts';
import { findLevel } from '../../core/model/choices.ts';
import { toRefusals } from '../../core/model/missing-text.ts';
import { type PlannedPoint, planPoints } from '../../core/model/plans.ts';
import type { Look } from '../../core/model/probes-of.ts';
import { isRefusal, type Refusal } from '../../core/quantity/refusal.ts';
import type { PointResult, Waveform } from '../../core/solver/operating-point.ts';
import { openBench } from '../../core/working/bench/bench.ts';
import { gatherFacts } from '../../core/working/facts.ts';
import { isPoint, isRefusals, runPoints } from '../../solver-pool/run-points.ts';
import type { OpenCase } from '../open-case.ts';
import { type KeptRun, keptRun } from './kept-run.ts';

export interface RunOptions {
  /** Id of a level, or "port~level"; the first where null. */
  readonly level: string | null;
  readonly workers: number;
  readonly signal?: AbortSignal;
  /** Share of the whole that is done. */
  readonly onProgress?: (done: number, of: number) => void;
}

const LOSSES_KEPT = 8;

/** Runs the traced circuit at its operating points. Null when it was stopped. */
export async function simulateCircuit(
  open: Pick<OpenCase, 'one' | 'tables'>,
  options: RunOptions,
): Promise<KeptRun<Simulation> | null | Refusal[]> {
  const facts = gatherFacts(openBench(open.one, open.tables));
  const level = findLevel(facts, options.level);
  if (isRefusal(level)) return [level];
  const planned = planPoints(facts, level);
  if ('because' in planned) return toRefusals(planned);
  const { onProgress } = options;
  onProgress?.(0, planned.points.length);
  const results = await runPoints(
    planned.points.map(({ plan }) => plan),
    {
      workers: options.workers,
      ...(options.signal === undefined ? {} : { signal: options.signal }),
      ...(onProgress === undefined ? {} : { onResult: (_: unknown, done: number, of: number) => onProgress(done, of) }),
    },
  );
  if (options.signal?.aborted === true || results.includes(null)) return null;
  const refused = results.flatMap((one) => (isRefusals(one) ? one : []));
  if (refused.length > 0) return refused;
  const { model } = planned;
  return keptRun(`points-${level.id}`, {
    format: SIMULATION_FORMAT,
    recipe: SIMULATION_RECIPE,
    key: simulationKey(planned),
    level: { ...level },
    assumptions: model.assumptions.map(toKeptAssumption),
    leftOut: [...model.leftOut],
    points: planned.points.map((point, index) => toPoint(point, results.filter(isPoint)[index]!)),
  } satisfies Simulation);
}

export function toKeptAssumption({ key, part, value, unit, source }: Assumption): Simulation['assumptions'][number] {
  return { key, part, value, unit, publication: source.publication, place: source.place, grade: source.grade };
}

function toPoint({ choice, mains, looks }: PlannedPoint, result: PointResult): OperatingPoint {
  const { probes } = result;
  const output = probes['output'] ?? null;
  return {
    id: choice.id,
    mains: { ...mains },
    load: choice.load,
    outcome: result.outcome,
    settled: result.settled,
    simulatedS: result.simulatedS,
    output: output === null ? null : { mean: output.mean, least: output.least, most: output.most },
    outputA: probes['output-current']?.mean ?? null,
    inputW: result.inputW,
    mainsRmsA: probes['mains-current']?.rms ?? null,
    touchRmsA: probes['touch']?.rms ?? null,
    stresses: looks.flatMap(({ probe, unit, stress }) => {
      const seen = probes[probe.id];
      if (stress === null || seen == null) return [];
      const value = { most: seen.most, least: -seen.least, either: Math.max(seen.most, -seen.least) }[stress.of];
      return [{ part: stress.part, unit, value: Math.max(0, value), limit: stress.limit }];
    }),
    losses: Object.entries(result.lossW)
      .filter(([part]) => part !== 'load')
      .map(([part, watts]) => ({ part, watts }))
      .sort((a, b) => b.watts - a.watts || (a.part < b.part ? -1 : 1))
      .slice(0, LOSSES_KEPT),
    findings: [...result.findings],
    imbalance: result.imbalance,
    balanced: result.balanced,
    waveform: toLines(looks, result.waveform, 'mains'),
    close: toLines(looks, result.close, 'switching'),
  };
}

/** Lines that a stretch of mains can show: what moves with the switch would be drawn by points that miss it. */
const SLOW: ReadonlySet<string> = new Set(['output', 'mains-current', 'bulk']);

export function toLines(looks: readonly Look[], waveform: Waveform | null, over: 'mains' | 'switching'): RunWaveform | null {
  if (waveform === null) return null;
  return {
    timeS: [...waveform.timeS],
    lines: looks.flatMap(({ probe, unit, drawn }, index) =>
      drawn && (over === 'switching' || SLOW.has(probe.id)) ? [{ id: probe.id, unit, values: [...waveform.values[index]!] }] : [],
    ),
  };
}
