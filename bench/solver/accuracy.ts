/**
 * Every circuit beside ngspice, every quantity, also the worst. Uses kept results of ngspice while the netlist's hash is the same;
 * `--missing` runs ngspice where none is kept, `--fresh` everywhere, `--fresh="full load"` for one circuit; what it said is kept.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { CIRCUITS } from './circuits.ts';
import { differences, netlistOf, runOurs, runReference, TIGHT } from './compare.ts';
import { hashOf, type NgspiceRun } from './run-ngspice.ts';

const KEPT = new URL('./kept-ngspice.json', import.meta.url);
type Kept = Record<
  string,
  NgspiceRun & { readonly date: string; readonly setting: string; readonly start: Readonly<Record<string, number>> }
>;
const kept: Kept = existsSync(KEPT) ? JSON.parse(readFileSync(KEPT, 'utf8')) : {};
const fresh = process.argv.find((word) => word.startsWith('--fresh'));
const only = fresh?.split('=')[1];

const rows: string[] = [];
let worst = { over: 0, what: '' };
for (const [id, make] of Object.entries(CIRCUITS)) {
  const again =
    (fresh !== undefined && (only === undefined || only === id)) || (process.argv.includes('--missing') && kept[id] === undefined);
  const circuit = make([id, again ? undefined : kept[id]?.start]);
  const sha256 = hashOf(netlistOf(circuit, TIGHT));
  let reference = kept[id];
  if (again) {
    reference = { ...runReference(circuit), date: new Date().toISOString().slice(0, 10), setting: TIGHT.options, start: circuit.start };
    kept[id] = reference;
    writeFileSync(KEPT, `${JSON.stringify(kept, null, 1)}\n`);
  }
  if (reference === undefined || reference.sha256 !== sha256) {
    rows.push(`${id.padEnd(40)} no ngspice result for this netlist: run with --fresh="${id}"`);
    continue;
  }
  const start = process.cpuUsage();
  const ours = runOurs(circuit);
  const { user, system } = process.cpuUsage(start);
  const cpuS = (user + system) / 1e6;
  for (const { name, ours: mine, theirs, share, goal } of differences(circuit, ours, reference.values)) {
    const verdict = share <= goal ? 'agrees' : 'DOES NOT AGREE';
    rows.push(
      `${id.padEnd(40)} ${name.padEnd(14)} ours ${mine.toPrecision(6).padStart(10)}  ngspice ${theirs.toPrecision(6).padStart(10)}  ${(100 * share).toFixed(2).padStart(6)} %  goal ${(100 * goal).toFixed(1).padStart(4)} %  ${verdict}`,
    );
    if (share / goal > worst.over) worst = { over: share / goal, what: `${id}, ${name}` };
  }
  const { steps, events, topologies } = ours.effort;
  rows.push(
    `${id.padEnd(40)} ${ours.outcome}; ${steps} steps, ${events} events, ${topologies} topologies; imbalance ${ours.energy.imbalance.toExponential(1)}; processor time ours ${cpuS.toFixed(2)} s, ngspice ${reference.cpuS?.toFixed(1) ?? 'not measured'} s on ${reference.date}`,
  );
  console.log(rows.splice(0).join('\n'));
}
console.log(`${rows.join('\n')}\nworst: ${worst.what}, ${worst.over.toFixed(2)} of its goal`);
