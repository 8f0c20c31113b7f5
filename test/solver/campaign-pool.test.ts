import { expect, it } from 'vitest';
import { adapter } from '../../bench/solver/adapter.ts';
import type { CampaignJob, CampaignPlan } from '../../src/core/solver/campaign.ts';
import { runCampaign } from '../../src/solver-pool/run-campaign.ts';
import { BUDGET } from './run-circuit.ts';

const PLAN: CampaignPlan = {
  circuit: adapter().circuit,
  load: 'RL',
  loads: [{ name: 'full', draw: { ohms: 2.5 } }],
  source: 'V1',
  nominalV: 5,
  harmV: 6,
  body: null,
  windowS: 2e-3,
  mostS: 6e-3,
  most: BUDGET,
};
const JOBS: CampaignJob[] = [
  { load: 'full', fault: { ref: 'U2', mode: 'open', pin: 'led.1' } },
  { load: 'full', fault: { ref: 'Q1', mode: 'open', pin: '1' } },
  { load: 'full', fault: { ref: 'C2', mode: 'short', pins: ['1', '2'] } },
  { load: 'full', fault: { ref: 'R8', mode: 'worn' } },
];

it('a campaign gives the same bytes with one worker as with two, in the order of its jobs', async () => {
  const seen: number[] = [];
  const one = await runCampaign(PLAN, JOBS, { workers: 1, onResult: (_, done, of) => seen.push(done / of) });
  const two = await runCampaign(PLAN, JOBS, { workers: 2 });
  expect(JSON.stringify(two)).toBe(JSON.stringify(one));
  expect(one.results.map((result) => result?.id)).toEqual(['U2 open led.1', 'Q1 open 1', 'C2 short 1-2', 'R8 worn']);
  expect(seen).toEqual([0.25, 0.5, 0.75, 1]);
});

it('a campaign that is stopped keeps what it has and says so', async () => {
  const stopping = new AbortController();
  const long = { ...PLAN, windowS: 50e-3, mostS: 0.3 };
  const began = runCampaign(long, JOBS, { workers: 1, signal: stopping.signal });
  setTimeout(() => stopping.abort(), 300);
  const { results, cancelled } = await began;
  expect(cancelled).toBe(true);
  expect(results.some((result) => result === null)).toBe(true);
});
