import type { CampaignJob, CampaignPlan, FaultResult } from '../core/solver/campaign.ts';
import type { JobMessage } from './run-job.ts';
import { type PoolOptions, runJobs } from './worker-pool.ts';

export type CampaignOptions = PoolOptions<FaultResult>;
export interface CampaignResult {
  /** In the order of the jobs, whatever worker ran them; null where a job was stopped. */
  readonly results: readonly (FaultResult | null)[];
  readonly cancelled: boolean;
}

/** Runs the jobs of a campaign on worker threads. Same plan and jobs, same results, for any number of workers. */
export async function runCampaign(plan: CampaignPlan, jobs: readonly CampaignJob[], options: CampaignOptions): Promise<CampaignResult> {
  const messages = jobs.map((job): Omit<JobMessage, 'stop'> => ({ plan, job }));
  const results = await runJobs<Omit<JobMessage, 'stop'>, FaultResult>('run-job', messages, options);
  return { results, cancelled: options.signal?.aborted === true };
}
