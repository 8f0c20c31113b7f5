import { readFile, writeFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { casebookCaseSource } from '../app/casebook/casebook-case-source.ts';
import { createDesk } from '../app/casebook/create-desk.ts';
import { stateAt } from '../app/casebook/state-at.ts';
import { keepRun } from '../app/circuit/keep-run.ts';
import type { KeptRun } from '../app/circuit/kept-run.ts';
import type { RunOptions } from '../app/circuit/simulate-circuit.ts';
import { type OpenCase, openCase } from '../app/open-case.ts';
import { keepFit } from '../app/soak/keep-fit.ts';
import { isRefusal, type Refusal, refuse } from '../core/quantity/refusal.ts';
import { CASE_FILE, caseFolder } from '../store/folder/case-folder.ts';
import { EXIT, Refused } from './output.ts';
import { withCasebook } from './with-casebook.ts';

export interface CircuitOptions {
  readonly json?: boolean;
  readonly level?: string;
  readonly casebook?: string;
}
type Runner<T> = (open: OpenCase, options: RunOptions) => Promise<KeptRun<T> | null | Refusal[]>;

/** As many workers as there are processors, but no more than help. House choice. */
const MOST_WORKERS = 4;

/** Runs the circuit of a case, tells how far it is, and keeps the result with the case. Ctrl-C ends it at once; nothing is kept then. */
export async function runCircuit<T>(which: string, options: CircuitOptions, run: Runner<T>): Promise<{ open: OpenCase; kept: KeptRun<T> }> {
  const { casebook } = options;
  if (casebook === undefined) {
    const folder = basename(which) === CASE_FILE ? dirname(which) : which;
    const open = opened(await openCase(caseFolder(folder)));
    const kept = await untilStopped(open, options, run);
    // the result first: a case never names a file that is not there
    await writeFile(join(folder, kept.attachment.path), kept.bytes);
    const file = join(folder, CASE_FILE);
    await writeFile(file, keepFit(await readFile(file, 'utf8'), kept));
    return { open, kept };
  }
  return withCasebook(casebook, { access: 'write' }, async (store) => {
    const found = await stateAt(store, which);
    if (found === null) throw new Refused([refuse('case-missing', which, 'a case of this casebook', { place: casebook })]);
    const open = opened(await openCase(casebookCaseSource(found.state, store.files)));
    const kept = await untilStopped(open, options, run);
    const now = (): string => new Date().toISOString();
    const desk = createDesk(store, { now, newId: () => crypto.randomUUID() });
    const answer = await keepRun({ store, desk }, which, kept, { by: 'command', at: now() });
    await desk.settle();
    if (isRefusal(answer)) throw new Refused([answer]);
    return { open, kept };
  });
}

function opened(open: OpenCase | Refusal[]): OpenCase {
  if (Array.isArray(open)) throw new Refused(open);
  return open;
}

async function untilStopped<T>(open: OpenCase, { level }: CircuitOptions, run: Runner<T>): Promise<KeptRun<T>> {
  // workers end with the process: nothing was written yet, so leaving at once leaves nothing half done
  const stop = (): void => {
    process.stderr.write('\nstopped; nothing was kept\n');
    process.exit(EXIT.stopped);
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  const terminal = process.stderr.isTTY === true;
  let told = -1;
  const onProgress = (done: number, of: number): void => {
    const percent = Math.floor((PERCENT * done) / of);
    if (percent === told || (!terminal && percent % TELL_EVERY !== 0)) return;
    told = percent;
    process.stderr.write(terminal ? `\r${percent} %` : `${percent} %\n`);
  };
  try {
    const result = await run(open, { level: level ?? null, workers: Math.min(MOST_WORKERS, availableParallelism()), onProgress });
    if (terminal) process.stderr.write('\r     \r');
    if (result === null) throw new Refused([refuse('stopped', 'a run that was stopped', 'a run that may end')]);
    if (Array.isArray(result)) throw new Refused(result);
    return result;
  } finally {
    process.off('SIGINT', stop);
    process.off('SIGTERM', stop);
  }
}

const PERCENT = 100;
const TELL_EVERY = 10; // per cent, where no terminal overwrites its line
