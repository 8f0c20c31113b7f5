/**
 * Every circuit beside ngspice, every quantity, also the worst. Uses kept results of ngspice while the netlist's hash is the same;
 * `--missing` runs ngspice where none is kept, `--fresh` everywhere, `--fresh="full load"` for one circuit; what it said is kept.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { CIRCUITS } from './circuits.ts';
import { differences, netlistOf, runOurs, runReference, TIGHT } from './compare.ts';
import { hashOf, type NgspiceRun } from './run-ngspice.ts';

const KEPT = new URL('./kept-ngspice.json', import.meta.url);
type Kept = Record<
  string,
  NgspiceRun & { readonly date: string; readonly setting: string; readonly start: Readonly<Record<string, number>> }
>;
const read = (): Kept => (existsSync(KEPT) ? JSON.parse(readFileSync(KEPT, 'utf8')) : {});
const kept = read();
const fresh = process.argv.find((word) => word.startsWith('--fresh'));
const only = fresh?.split('=')[1];

const rows: string[] = [];
const summary: string[] = [];
let worst = { over: 0, what: '' };
for (const [id, make] of Object.entries(CIRCUITS)) {
  const again =
    (fresh !== undefined && (only === undefined || only === id)) || (process.argv.includes('--missing') && kept[id] === undefined);
  const circuit = make([id, again ? undefined : kept[id]?.start]);
  const sha256 = hashOf(netlistOf(circuit, TIGHT));
  let reference = kept[id];
  if (again) {
    reference = { ...runReference(circuit), date: new Date().toISOString().slice(0, 10), setting: TIGHT.options, start: circuit.start };
    // read again: another run may have kept something meanwhile
    writeFileSync(KEPT, `${JSON.stringify({ ...read(), [id]: reference }, null, 1)}\n`);
  }
  const start = process.cpuUsage();
  const ours = runOurs(circuit);
  const { user, system } = process.cpuUsage(start);
  const cpuMs = (user + system) / 1e3;
  const { steps, events, topologies } = ours.effort;
  const line = (worstOfIt: string): string =>
    [
      id.padEnd(40),
      String(steps).padStart(9),
      String(events).padStart(9),
      String(topologies).padStart(12),
      cpuMs.toFixed(0).padStart(7),
      (reference?.cpuS?.toFixed(0) ?? '-').padStart(11),
      ours.energy.imbalance.toExponential(0).padStart(8),
      `  ${worstOfIt}`,
    ].join('');
  if (reference === undefined || reference.sha256 !== sha256) {
    console.log(`${id.padEnd(40)} no ngspice result for this netlist: run with --fresh="${id}"`);
    summary.push(line(`${ours.outcome}, nothing kept to compare with`));
    continue;
  }
  let most = { over: 0, what: '' };
  for (const { name, ours: mine, theirs, share, goal } of differences(circuit, ours, reference.values)) {
    const verdict = share <= goal ? 'agrees' : 'DOES NOT AGREE';
    rows.push(
      `${id.padEnd(40)} ${name.padEnd(18)} ours ${mine.toPrecision(6).padStart(10)}  ngspice ${theirs.toPrecision(6).padStart(10)}  ${(100 * share).toFixed(2).padStart(6)} %  goal ${(100 * goal).toFixed(1).padStart(4)} %  ${verdict}`,
    );
    if (share / goal > most.over)
      most = { over: share / goal, what: `${name} ${(100 * share).toFixed(2)} % of ${(100 * goal).toFixed(1)} %` };
  }
  if (most.over > worst.over) worst = { over: most.over, what: `${id}, ${most.what}` };
  summary.push(line(`${ours.outcome}; worst: ${most.what}`));
  console.log(rows.splice(0).join('\n'));
}
console.log(`\nload of the machine, mean of a minute: ${loadavg()[0]!.toFixed(1)}`);
console.log(
  `${'circuit'.padEnd(40)}${'products'.padStart(9)}${'events'.padStart(9)}${'topologies'.padStart(12)}${'ms'.padStart(7)}${'ngspice s'.padStart(11)}${'energy'.padStart(8)}`,
);
console.log(`${summary.join('\n')}\nworst of all: ${worst.what}, ${worst.over.toFixed(2)} of its goal`);
