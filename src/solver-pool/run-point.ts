/** The work of one worker: one operating point. */
import type { Refusal } from '../core/quantity/refusal.ts';
import { type PointPlan, type PointResult, runPoint } from '../core/solver/operating-point.ts';

export interface PointMessage {
  readonly plan: PointPlan;
  /** One 32-bit word that all workers see; other than zero means stop. */
  readonly stop: SharedArrayBuffer;
}

export default function run({ plan, stop }: PointMessage): PointResult | readonly Refusal[] | null {
  const word = new Int32Array(stop);
  const cancelled = (): boolean => Atomics.load(word, 0) !== 0;
  if (cancelled()) return null;
  const result = runPoint(plan, { cancelled });
  return cancelled() ? null : result;
}
