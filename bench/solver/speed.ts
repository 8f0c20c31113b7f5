/**
 * Processor time of the 41-element circuit at full load, 3 ms, beside native ngspice at a tight and at a cheap setting, one after the
 * other on the same machine. Our own time is the median of five runs in a warm process, set-up of topologies and sums included.
 */
import { readFileSync } from 'node:fs';
import { CIRCUITS } from './circuits.ts';
import { CHEAP, runOurs, runReference, TIGHT } from './compare.ts';

const ROUNDS = 5;
const id = 'full load';
const kept = JSON.parse(readFileSync(new URL('./kept-ngspice.json', import.meta.url), 'utf8'));
const circuit = { ...CIRCUITS[id]!([id, kept[id]?.start]), fromS: 1e-3, stopS: 3e-3 };

function cpuOf(work: () => unknown): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6;
}

const ours = Object.fromEntries(
  (['report', 'screening'] as const).map((accuracy) => {
    const times = Array.from({ length: ROUNDS }, () => cpuOf(() => runOurs(circuit, accuracy))).sort((a, b) => a - b);
    return [accuracy, times[Math.floor(ROUNDS / 2)]!];
  }),
);
for (const [name, setting] of Object.entries({ tight: TIGHT, cheap: CHEAP })) {
  const theirs = runReference(circuit, setting).cpuS ?? Number.NaN;
  console.log(`ngspice, ${name} (${setting.options}, steps to ${setting.longestStepS * 1e9} ns): ${theirs.toFixed(2)} s`);
  for (const [accuracy, seconds] of Object.entries(ours))
    console.log(`  ours, ${accuracy.padEnd(10)} ${seconds.toFixed(3)} s   ${(theirs / seconds).toFixed(0)} times as fast`);
}
