/**
 * Measures the importer: `tsx bench/importer/measure.ts [--plain-mb 50] [--log-mb 10] [--rounds 5]`.
 * Every run is a process of its own (so that memory is its own), the readers take turns, and each is set against the named reference
 * that ran beside it. Prints per reader: min, median, spread (max - min), ratio of the medians, and the memory above the bare process.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { generateTable, type TableKind } from './generate-table.ts';
import { READERS, SUITES } from './readers.ts';

const SEED = 20_310_503;
const MEGABYTE = 1_000_000;
const KILOBYTE = 1024; // resourceUsage counts in these
const HEAP_MB = 6000; // for the reference, which holds every row as a string
const ABSENT = 'absent';

interface Run {
  readonly ms: number;
  readonly rows: number;
  readonly memory: number;
}

async function runOne(name: string, path: string): Promise<void> {
  const reader = await READERS[name]!();
  if (reader === null) {
    console.log(ABSENT);
    return;
  }
  const before = process.resourceUsage().maxRSS * KILOBYTE;
  const start = performance.now();
  const rows = await reader(path);
  const ms = performance.now() - start;
  console.log(JSON.stringify({ ms, rows, memory: process.resourceUsage().maxRSS * KILOBYTE - before } satisfies Run));
}

function spawnOne(name: string, path: string): Run | null {
  const args = [`--max-old-space-size=${HEAP_MB}`, '--import', 'tsx', fileURLToPath(import.meta.url), '--reader', name, '--file', path];
  const child = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (child.status !== 0) throw new Error(`${name}: ${child.stderr}`);
  const said = child.stdout.trim();
  return said === ABSENT ? null : (JSON.parse(said) as Run);
}

function median(sorted: readonly number[]): number {
  const middle = (sorted.length - 1) / 2;
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle)]!) / 2;
}

function measure(kind: TableKind, megabytes: number, rounds: number, folder: string): void {
  const path = join(folder, `${kind}.csv`);
  generateTable(path, kind, megabytes * MEGABYTE, SEED);
  const bytes = statSync(path).size;
  const runs = new Map<string, Run[]>();
  for (let round = 0; round < rounds; round++) {
    for (const name of SUITES[kind]) {
      const run = spawnOne(name, path);
      if (run !== null) runs.set(name, [...(runs.get(name) ?? []), run]);
    }
  }
  const reference = SUITES[kind][0];
  const toTimes = (name: string) =>
    runs
      .get(name)!
      .map((run) => run.ms)
      .sort((a, b) => a - b);
  const beside = median(toTimes(reference));
  console.log(
    `\n${kind}: ${(bytes / MEGABYTE).toFixed(1)} MB, ${runs.get(reference)![0]!.rows} rows, seed ${SEED}, ${rounds} rounds; reference: ${reference}`,
  );
  for (const name of SUITES[kind]) {
    if (!runs.has(name)) {
      console.log(`  ${name.padEnd(26)} absent (not installed here)`);
      continue;
    }
    const times = toTimes(name);
    const memory = Math.max(...runs.get(name)!.map((run) => run.memory)) / bytes;
    const numbers = [
      `min ${times[0]!.toFixed(0)} ms`,
      `median ${median(times).toFixed(0)} ms`,
      `spread ${(times.at(-1)! - times[0]!).toFixed(0)} ms`,
    ];
    const rate = `${(bytes / MEGABYTE / (median(times) / 1000)).toFixed(0)} MB/s`;
    console.log(
      `  ${name.padEnd(26)} ${numbers.join(', ')}, ${rate}, ${(beside / median(times)).toFixed(2)} times the reference's speed, memory ${memory.toFixed(2)} times the file`,
    );
  }
}

const { values } = parseArgs({
  options: {
    reader: { type: 'string' },
    file: { type: 'string' },
    'plain-mb': { type: 'string', default: '50' },
    'log-mb': { type: 'string', default: '10' },
    rounds: { type: 'string', default: '5' },
  },
});
if (values.reader !== undefined && values.file !== undefined) await runOne(values.reader, values.file);
else {
  const folder = mkdtempSync(join(tmpdir(), 'importer-'));
  try {
    measure('plain', Number(values['plain-mb']), Number(values.rounds), folder);
    measure('log', Number(values['log-mb']), Number(values.rounds), folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
