import { isRefusal, type Refusal } from '../core/quantity/refusal.ts';
import type { PointPlan, PointResult } from '../core/solver/operating-point.ts';
import { type PoolOptions, runJobs } from './worker-pool.ts';

/** Runs operating points on worker threads, each on its own; null where one was stopped. A refusal in one is an answer for it alone. */
export async function runPoints(
  plans: readonly PointPlan[],
  options: PoolOptions<PointResult | readonly Refusal[]>,
): Promise<(PointResult | readonly Refusal[] | null)[]> {
  return runJobs(
    'run-point',
    plans.map((plan) => ({ plan })),
    options,
  );
}

export const isPoint = (one: PointResult | readonly Refusal[] | null): one is PointResult => one !== null && !isRefusals(one);
export const isRefusals = (one: PointResult | readonly Refusal[] | null): one is readonly Refusal[] =>
  Array.isArray(one) && one.every(isRefusal);
