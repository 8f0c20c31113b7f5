/**
 * Processor time of the 41-element circuit at full load beside native ngspice, which takes a minute and more: what it took is kept with date
 * and netlist hash in kept-speed.json; `--fresh` measures it again, one run after the other. Our own time is the median of nine runs in a
 * warm process, set-up of topologies and sums included; the first run of the process is printed beside it.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { CIRCUITS } from './circuits.ts';
import { CHEAP, netlistOf, runOurs, runReference, TIGHT } from './compare.ts';
import { hashOf } from './run-ngspice.ts';

const ROUNDS = 9;
const id = 'full load';
const read = (name: string): URL => new URL(name, import.meta.url);
const starts = JSON.parse(readFileSync(read('./kept-ngspice.json'), 'utf8'));
interface KeptSpeed {
  readonly cpuS: number | null;
  readonly sha256: string;
  readonly date: string;
  readonly load: string;
}
const KEPT = read('./kept-speed.json');
const kept: Record<string, KeptSpeed> = existsSync(KEPT) ? JSON.parse(readFileSync(KEPT, 'utf8')) : {};
const loadNow = (): string => loadavg()[0]!.toFixed(1);

function cpuOf(work: () => unknown): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6;
}

console.log(`load of the machine, mean of a minute: ${loadNow()}`);
for (const stopS of [3e-3, 10e-3]) {
  const circuit = { ...CIRCUITS[id]!([id, starts[id]?.start]), fromS: stopS / 3, stopS };
  const ours = Object.fromEntries(
    (['report', 'screening'] as const).map((accuracy) => {
      const times = Array.from({ length: ROUNDS }, () => cpuOf(() => runOurs(circuit, accuracy)));
      const first = times[0]!;
      return [accuracy, { first, median: times.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)]! }];
    }),
  );
  for (const [name, setting] of Object.entries({ tight: TIGHT, cheap: CHEAP })) {
    const key = `${name}, ${stopS * 1e3} ms`;
    const sha256 = hashOf(netlistOf(circuit, setting));
    if (process.argv.includes('--fresh')) {
      const load = loadNow();
      kept[key] = { cpuS: runReference(circuit, setting).cpuS, sha256, date: new Date().toISOString().slice(0, 10), load };
      writeFileSync(KEPT, `${JSON.stringify(kept, null, 1)}\n`);
    }
    const theirs = kept[key];
    if (theirs?.cpuS == null || theirs.sha256 !== sha256) {
      console.log(`ngspice, ${key}: nothing kept for this netlist: run with --fresh`);
      continue;
    }
    console.log(
      `ngspice, ${key} (${setting.options}, steps to ${setting.longestStepS * 1e9} ns): ${theirs.cpuS.toFixed(2)} s on ${theirs.date} at a load of ${theirs.load}`,
    );
    for (const [accuracy, { first, median }] of Object.entries(ours))
      console.log(
        `  ours, ${accuracy.padEnd(10)} ${median.toFixed(3)} s   ${(theirs.cpuS / median).toFixed(0)} times as fast (first run ${first.toFixed(3)} s)`,
      );
  }
}
