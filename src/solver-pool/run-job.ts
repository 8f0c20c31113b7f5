/** The work of one worker: settles the healthy circuit once for each load, and runs faults from there. */
import { isRefusal } from '../core/quantity/refusal.ts';
import { type CampaignJob, type CampaignPlan, type FaultResult, runFault, settleHealthy } from '../core/solver/campaign.ts';
import type { Snapshot } from '../core/solver/request.ts';

export interface JobMessage {
  readonly plan: CampaignPlan;
  readonly job: CampaignJob;
  /** One 32-bit word that all workers see; other than zero means stop. */
  readonly stop: SharedArrayBuffer;
}

/** Settled starts of the campaign this worker is in, by load; the same in every worker, since the solver gives the same bytes. */
let settledFor = '';
const settled = new Map<string, Snapshot>();

export default function runJob({ plan, job, stop }: JobMessage): FaultResult | null {
  const word = new Int32Array(stop);
  const cancelled = (): boolean => Atomics.load(word, 0) !== 0;
  if (cancelled()) return null;
  const campaign = JSON.stringify(plan);
  if (campaign !== settledFor) {
    settled.clear();
    settledFor = campaign;
  }
  const start = settled.get(job.load) ?? settleHealthy(plan, job.load, cancelled);
  if (cancelled()) return null;
  if (Array.isArray(start))
    throw new Error(
      start
        .filter(isRefusal)
        .map((one) => JSON.stringify(one))
        .join('\n'),
    );
  settled.set(job.load, start as Snapshot);
  const result = runFault(plan, job, start as Snapshot, cancelled);
  return result.outcome === 'cancelled' ? null : result;
}
