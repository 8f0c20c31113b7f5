import { isRefusal } from '../quantity/refusal.ts';
import type { CampaignJob, CampaignPlan } from './campaign.ts';
import { applyFault } from './fault.ts';
import type { Waveform } from './operating-point.ts';
import type { Probe, Snapshot, SolverResult } from './request.ts';
import { simulate } from './simulate.ts';

/** One fault of a campaign to be looked at again, with lines to be drawn. Plain data, for a worker. */
export interface FaultLook {
  readonly plan: CampaignPlan;
  readonly job: CampaignJob;
  readonly probes: readonly Probe[];
  /** How long: as long as the campaign looked. */
  readonly seconds: number;
  readonly points: number;
}
export interface FaultLines extends Waveform {
  readonly outcome: SolverResult['outcome'];
}

/** The same fault from the same settled circuit; the first point is the healthy circuit. */
export function lookAtFault(
  { plan, job, probes, seconds, points }: FaultLook,
  healthy: Snapshot,
  cancelled?: () => boolean,
): FaultLines | null {
  const draw = plan.loads.find(({ name }) => name === job.load)?.draw;
  if (draw === undefined) throw new Error(`the campaign has no load ${job.load}`);
  const loaded = {
    ...plan.circuit,
    parts: plan.circuit.parts.map((part) => (part.ref === plan.load && part.kind === 'load' ? { ...part, draw } : part)),
  };
  const result = simulate({
    circuit: applyFault(loaded, job.fault),
    start: healthy,
    stopS: seconds,
    fromS: 0,
    probes,
    waveform: { spacingS: seconds / points, fromS: 0 },
    accuracy: 'screening',
    most: plan.most,
    endAtRating: true,
    ...(cancelled === undefined ? {} : { cancelled }),
  });
  if (Array.isArray(result))
    throw new Error(
      result
        .filter(isRefusal)
        .map((one) => JSON.stringify(one))
        .join('\n'),
    );
  const { waveform, outcome } = result as SolverResult;
  if (waveform === null || outcome === 'cancelled') return null;
  const begin = waveform.timeS[0] ?? 0;
  return { timeS: waveform.timeS.map((at) => at - begin), values: waveform.values, outcome };
}
