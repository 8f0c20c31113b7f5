/** Every single fault of the 41-element adapter at full load on two workers: time, states, memory. `--loads` for three loads. */
import { loadavg } from 'node:os';
import type { CampaignPlan } from '../../src/core/solver/campaign.ts';
import { enumerateFaults } from '../../src/core/solver/fault.ts';
import { runCampaign } from '../../src/solver-pool/run-campaign.ts';
import { adapter } from './adapter.ts';

const { circuit } = adapter();
const loads: CampaignPlan['loads'] = [
  { name: 'full load', draw: { ohms: 2.5 } },
  { name: '50 mA', draw: { amps: 0.05, fromV: 1 } },
  { name: 'no load', draw: { ohms: 1e5 } },
];
const plan: CampaignPlan = {
  circuit,
  load: 'RL',
  loads,
  source: 'V1',
  nominalV: 5,
  harmV: 6,
  body: 'B1',
  windowS: 5e-3,
  mostS: 0.3,
  most: { steps: 2e7, topologies: 2000 },
};
const faults = enumerateFaults(circuit);
const used = process.argv.includes('--loads') ? loads : loads.slice(0, 1);
const jobs = used.flatMap(({ name }) => faults.map((fault) => ({ load: name, fault })));
const load = loadavg()[0]!;
const start = performance.now();
const { results } = await runCampaign(plan, jobs, { workers: 2 });
const seconds = (performance.now() - start) / 1000;
const { user, system } = process.cpuUsage();
const cpuS = (user + system) / 1e6;
const states: Record<string, number> = {};
for (const one of results) if (one !== null) states[one.state] = (states[one.state] ?? 0) + 1;
console.log(
  `${jobs.length} jobs (${faults.length} faults, ${used.length} loads) in ${seconds.toFixed(1)} s on two workers, ${cpuS.toFixed(1)} s of processor time at a load of ${load.toFixed(1)}; memory ${(process.memoryUsage().rss / 2 ** 20).toFixed(0)} MiB`,
);
console.log(`for 80 faults that is ${((80 / faults.length) * cpuS).toFixed(1)} s of processor time, half of it on two free cores`);
console.log(
  Object.entries(states)
    .map(([state, count]) => `${state} ${count}`)
    .join(', '),
);
for (const one of results)
  if (one !== null && (one.state === 'noResult' || !one.balanced))
    console.log(`${one.load}, ${one.id}: ${one.state}, ${one.outcome}, ${one.balanced ? '' : 'does not balance'}`);
