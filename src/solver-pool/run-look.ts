/** The work of one worker: lines of one fault, from just before it on. */
import { isRefusal } from '../core/quantity/refusal.ts';
import { settleHealthy } from '../core/solver/campaign.ts';
import { type FaultLines, type FaultLook, lookAtFault } from '../core/solver/fault-lines.ts';
import type { Snapshot } from '../core/solver/request.ts';

export interface LookMessage {
  readonly look: FaultLook;
  readonly stop: SharedArrayBuffer;
}

export default function run({ look, stop }: LookMessage): FaultLines | null {
  const word = new Int32Array(stop);
  const cancelled = (): boolean => Atomics.load(word, 0) !== 0;
  if (cancelled()) return null;
  const healthy = settleHealthy(look.plan, look.job.load, cancelled);
  if (cancelled()) return null;
  if (Array.isArray(healthy))
    throw new Error(
      healthy
        .filter(isRefusal)
        .map((one) => JSON.stringify(one))
        .join('\n'),
    );
  return lookAtFault(look, healthy as Snapshot, cancelled);
}
