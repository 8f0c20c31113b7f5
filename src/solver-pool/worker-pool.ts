import { Piscina } from 'piscina';

/** From sources the workers need the loader that runs them; the built program, whose parts lie beside this folder, does not. */
const FROM_SOURCE = import.meta.url.endsWith('.ts');

export interface PoolOptions<R> {
  readonly workers: number;
  /** Stops all workers within a few milliseconds; what is finished is kept. */
  readonly signal?: AbortSignal;
  readonly onResult?: (result: R, done: number, of: number) => void;
}

/** Hands jobs to worker threads; answers in the order of the jobs, null where one was stopped. `worker`: name of the file beside this one. */
export async function runJobs<J, R>(worker: string, jobs: readonly J[], options: PoolOptions<R>): Promise<(R | null)[]> {
  const stop = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const halt = (): void => void Atomics.store(new Int32Array(stop), 0, 1);
  options.signal?.addEventListener('abort', halt, { once: true });
  if (options.signal?.aborted === true) halt();
  const pool = new Piscina({
    filename: new URL(FROM_SOURCE ? `./${worker}.ts` : `../solver-pool/${worker}.js`, import.meta.url).href,
    minThreads: options.workers,
    maxThreads: options.workers,
    ...(FROM_SOURCE ? { execArgv: ['--import', 'tsx'] } : {}),
  });
  try {
    let done = 0;
    return await Promise.all(
      jobs.map(async (job) => {
        const result = (await pool.run({ ...job, stop })) as R | null;
        done += 1;
        if (result !== null) options.onResult?.(result, done, jobs.length);
        return result;
      }),
    );
  } finally {
    options.signal?.removeEventListener('abort', halt);
    await pool.destroy();
  }
}
