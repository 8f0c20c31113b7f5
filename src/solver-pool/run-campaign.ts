import { Piscina } from 'piscina';
import type { CampaignJob, CampaignPlan, FaultResult } from '../core/solver/campaign.ts';
import type { JobMessage } from './run-job.ts';

export interface CampaignOptions {
  readonly workers: number;
  /** Stops all workers within a few milliseconds; what is finished is kept. */
  readonly signal?: AbortSignal;
  readonly onResult?: (result: FaultResult, done: number, of: number) => void;
}
export interface CampaignResult {
  /** In the order of the jobs, whatever worker ran them; null where a job was stopped. */
  readonly results: readonly (FaultResult | null)[];
  readonly cancelled: boolean;
}

/** From sources the workers need the loader that runs them; the built program, whose parts lie beside this folder, does not. */
const FROM_SOURCE = import.meta.url.endsWith('.ts');
const WORKER = new URL(FROM_SOURCE ? './run-job.ts' : '../solver-pool/run-job.js', import.meta.url).href;

/** Runs the jobs of a campaign on worker threads. Same plan and jobs, same results, for any number of workers. */
export async function runCampaign(plan: CampaignPlan, jobs: readonly CampaignJob[], options: CampaignOptions): Promise<CampaignResult> {
  const stop = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const halt = (): void => void Atomics.store(new Int32Array(stop), 0, 1);
  options.signal?.addEventListener('abort', halt, { once: true });
  if (options.signal?.aborted === true) halt();
  const pool = new Piscina({
    filename: WORKER,
    minThreads: options.workers,
    maxThreads: options.workers,
    ...(FROM_SOURCE ? { execArgv: ['--import', 'tsx'] } : {}),
  });
  try {
    let done = 0;
    const results = await Promise.all(
      jobs.map(async (job) => {
        const message: JobMessage = { plan, job, stop };
        const result = (await pool.run(message)) as FaultResult | null;
        done += 1;
        if (result !== null) options.onResult?.(result, done, jobs.length);
        return result;
      }),
    );
    return { results, cancelled: options.signal?.aborted === true };
  } finally {
    options.signal?.removeEventListener('abort', halt);
    await pool.destroy();
  }
}
