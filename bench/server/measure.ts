/**
 * The server on the demo casebook: how long until it answers beside an empty Node.js process, and what memory it then takes; and the way of
 * a key through the desk, from edit to changed verdict, in the large case, beside a bare write to the disk of the same revision.
 */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { closeSync, fsyncSync, openSync, readFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import type { CaseState } from '../../src/app/casebook/case-state.ts';
import { createDesk } from '../../src/app/casebook/create-desk.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { digestOf } from '../../src/core/result/digest.ts';
import { largeCase } from '../large-case.ts';
import { line, measure } from '../measure.ts';
import { inScratch, opened } from '../store/scratch.ts';

const COMMAND = 'dist/cli/main.js';
const CASES = ['beck-5', 'fell-12', 'moss-trio', 'tarn-30'];
const STARTS = 7;
const KEYS = 300;
const EMPTY_STARTS = 11;
const KIB_PER_MIB = 1024;
const US_PER_MS = 1000;

interface Served {
  readonly child: ChildProcess;
  readonly link: string;
  readonly ms: number;
}

/** Until the list of cases is answered. */
async function serve(casebook: string): Promise<Served> {
  const begun = performance.now();
  const child = spawn(process.execPath, [COMMAND, 'serve', '--casebook', casebook, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const link = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const found = /workspace at (http:\S+)/.exec(said)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
  });
  const answer = await fetch(new URL('/api/casebook', link));
  if (!answer.ok) throw new Error(await answer.text());
  await answer.arrayBuffer();
  return { child, link, ms: performance.now() - begun };
}

const stopped = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGTERM');
  });

/** Resident memory of a process in MiB: now, and the most it ever was (Linux: /proc, in KiB). */
function memoryOf({ pid }: ChildProcess): { now: number; most: number } {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  const read = (name: string): number => Number(new RegExp(`^${name}:\\s+(\\d+) kB`, 'm').exec(status)?.[1]) / KIB_PER_MIB;
  return { now: read('VmRSS'), most: read('VmHWM') };
}

function shareOf(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}
const told = (times: readonly number[]): string =>
  `min ${Math.min(...times).toFixed(2)} ms   median ${shareOf(times, 0.5).toFixed(2)} ms   95 % below ${shareOf(times, 0.95).toFixed(2)} ms   worst ${Math.max(...times).toFixed(2)} ms`;

await inScratch(async (folder) => {
  const casebook = join(folder, 'demo.casebook');
  for (const name of CASES) execFileSync(process.execPath, [COMMAND, 'import', join('examples', name), '--casebook', casebook]);
  const empty = measure(() => execFileSync(process.execPath, ['-e', '0']), EMPTY_STARTS);
  console.log(line('empty Node.js process (reference)', empty));
  const starts: number[] = [];
  for (let start = 0; start < STARTS; start += 1) {
    const served = await serve(casebook);
    starts.push(served.ms);
    if (start === STARTS - 1) {
      for (const name of CASES) await (await fetch(new URL(`/api/cases/${name}`, served.link))).arrayBuffer();
      const { now, most } = memoryOf(served.child);
      console.log(
        `memory with the demo casebook, all cases open, target under 200 MiB: ${now.toFixed(0)} MiB, at most ${most.toFixed(0)} MiB`,
      );
    }
    await stopped(served.child);
  }
  console.log(
    `start until the list is answered, target under 1000 ms: ${told(starts)}   ${(shareOf(starts, 0.5) / empty.median).toFixed(1)} × an empty process`,
  );
});

await inScratch(async (folder) => {
  const store = await opened(join(folder, 'large.casebook'));
  const now = (): string => new Date().toISOString();
  const state = { case: JSON.parse(JSON.stringify(largeCase())) as CaseState['case'], drafts: {} };
  const id = 'bench-large';
  await store.cases.create(id, {
    at: now(),
    by: 'bench',
    step: 'new',
    name: { key: 'new', args: {} },
    changes: [],
    sha256: digestOf(state),
    state,
  });
  const desk = createDesk(store, { now, newId: randomUUID });
  const first = await desk.open(id);
  if (isRefusal(first)) throw new Error(sentence(first));
  const at = '/case/exhibits/sweep-10/table/rows/r20/cells/1';
  const rows = largeCase().exhibits?.find((exhibit) => exhibit.id === 'sweep-10') as { table: { rows: { id: string; cells: string[] }[] } };
  let was = rows.table.rows.find((row) => row.id === 'r20')?.cells[1] ?? '';
  let moved = 0;
  const keys: number[] = [];
  const cpu = process.cpuUsage();
  for (let key = 0; key < KEYS; key += 1) {
    const to = `${key % 2 === 0 ? '4' : '12'}.${String(key).padStart(3, '0')}`;
    const begun = performance.now();
    const answer = await desk.edit(id, {
      by: 'bench',
      base: key + 1,
      step: `k${key}`,
      name: { key: 'cell', args: {} },
      changes: [{ at, was, to }],
    });
    JSON.stringify(answer);
    keys.push(performance.now() - begun);
    if (isRefusal(answer) || answer.conflicts.length > 0) throw new Error('an edit was not taken');
    if (answer.view.rows.length > 0) moved += 1;
    was = to;
  }
  const used = process.cpuUsage(cpu);
  console.log(
    `processor time of a key, whatever else the machine does: ${((used.user + used.system) / US_PER_MS / KEYS).toFixed(2)} ms on average`,
  );
  if (moved < KEYS / 2) throw new Error(`only ${moved} of ${KEYS} keys moved a finding: this measures nothing`);
  const [, last] = await store.cases.revisions(id, KEYS);
  const bytes = JSON.stringify(last);
  const plain = openSync(join(folder, 'plain'), 'a');
  const writes = keys.map(() => {
    const begun = performance.now();
    writeSync(plain, bytes);
    fsyncSync(plain);
    return performance.now() - begun;
  });
  closeSync(plain);
  console.log(`append ${bytes.length} bytes to a file, fsync (reference): ${told(writes)}`);
  console.log(
    `a key in the large case, edit to changed verdict: ${told(keys)}   ${(shareOf(keys, 0.5) / shareOf(writes, 0.5)).toFixed(1)} × append and fsync; ${moved} of ${KEYS} keys moved a finding`,
  );
  await desk.settle();
  await store.close();
});
