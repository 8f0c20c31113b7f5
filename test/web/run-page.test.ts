import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from '../../src/app/circuit/kept-run.ts';
import { prepareFaults } from '../../src/app/circuit/run-faults.ts';
import { openCase } from '../../src/app/open-case.ts';
import { keepFit } from '../../src/app/soak/keep-fit.ts';
import {
  CAMPAIGN_FORMAT,
  CAMPAIGN_RECIPE,
  type FaultCampaign,
  type FaultOutcome,
} from '../../src/core/evidence/computed/fault-campaign.ts';
import { caseFolder } from '../../src/store/folder/case-folder.ts';
import { startWorkspace, type TestWorkspace } from './start-workspace.ts';

const CASE = 'fell-12';
let workspace: TestWorkspace;
let folder: string;

const outcome = (fault: string, load: FaultOutcome['load'], more: Partial<FaultOutcome> = {}): FaultOutcome => ({
  fault,
  load,
  state: 'regulates',
  outcome: 'completed',
  simulatedS: 0.025,
  outputMostV: 12.1,
  aboveHarmS: 0,
  touchRmsA: 1e-4,
  settled: { outputV: 12.05, inputW: 0.2 },
  hotter: [],
  slopeVPerS: null,
  findings: [],
  balanced: true,
  ...more,
});

/** A campaign of three faults with what they come to by hand, kept under the key of the circuit of Fell 12 as it is. */
async function withCampaign(path: string): Promise<void> {
  const open = await openCase(caseFolder(path));
  if (Array.isArray(open)) throw new Error(JSON.stringify(open));
  const prepared = prepareFaults(open, null);
  if (Array.isArray(prepared)) throw new Error(JSON.stringify(prepared));
  const loads = ['none', 'standby', 'full'] as const;
  const runaway = { state: 'ratingExceeded', outcome: 'ratingExceeded', settled: null, outputMostV: 16.3, aboveHarmS: 0.003 } as const;
  const beyond = { code: 'ratingExceeded', ref: 'C7', atS: 0.0033, value: 16.01, limit: 16 } as const;
  const opens = { code: 'fuseOpened', ref: 'F1', atS: 0.002, value: null, limit: null } as const;
  const result: FaultCampaign = {
    format: CAMPAIGN_FORMAT,
    recipe: CAMPAIGN_RECIPE,
    key: prepared.key,
    level: { ...prepared.level },
    mains: { rmsV: 264, hertz: 60 },
    harmV: 12.6,
    assumptions: [
      {
        key: 'windingSelf',
        part: 'T1 P',
        value: 50e-12,
        unit: 'F',
        publication: 'convention',
        place: 'invented for a test',
        grade: 'common-practice',
      },
    ],
    leftOut: ['R4'],
    fuses: ['F1'],
    tripKnown: false,
    tolerated: [],
    healthy: loads.map((load) => ({ load, outputV: 12.05, inputW: 0.2, touchRmsA: 1e-4 })),
    faults: [
      { id: 'U2 open led.1', ref: 'U2', mode: 'open', pins: ['led.1'] },
      { id: 'BD1-1 short 1-2', ref: 'BD1-1', mode: 'short', pins: ['1', '2'] },
      { id: 'R7 open 1', ref: 'R7', mode: 'open', pins: ['1'] },
    ],
    results: loads.flatMap((load) => [
      outcome('U2 open led.1', load, load === 'full' ? {} : { ...runaway, findings: [beyond] }),
      outcome('BD1-1 short 1-2', load, { state: 'dead', settled: { outputV: 0.04, inputW: 0 }, findings: [opens] }),
      outcome('R7 open 1', load),
    ]),
    acrossBarrier: [{ id: 'T1 short P.1-S.1', ref: 'T1', mode: 'short', pins: ['P.1', 'S.1'] }],
    certified: [],
    worst: [
      {
        fault: 'U2 open led.1',
        load: 'none',
        waveform: { timeS: [0, 0.001, 0.002, 0.0033], lines: [{ id: 'output', unit: 'V', values: [12.05, 13.2, 14.6, 16.01] }] },
      },
    ],
  };
  const kept = keptRun('faults-12v', result);
  writeFileSync(join(path, kept.attachment.path), kept.bytes);
  const file = join(path, 'case.json');
  writeFileSync(file, keepFit(readFileSync(file, 'utf8'), kept));
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'mainsworthy-runs-'));
  const own = join(folder, CASE);
  cpSync(join('examples', CASE), own, { recursive: true });
  await withCampaign(own);
  workspace = await startWorkspace(['moss-trio', relative('examples', own)]);
}, 120_000);
afterAll(async () => {
  await workspace.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function openRuns(id = CASE, more: Parameters<TestWorkspace['page']>[0] = {}) {
  const opened = await workspace.page(more);
  await opened.page.goto(`${workspace.link}case/${id}/faults`);
  await opened.page.getByRole('heading', { name: 'Run the circuit' }).waitFor();
  return opened;
}
const cell = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

describe('the page on which a circuit is run', () => {
  it('shows faults by load with a sign and a word, only those that change something, and all when asked', async () => {
    const { page, complaints } = await openRuns();
    await cell(page, 'U2 open at led.1, no load: ended at a rating').waitFor();
    expect(await page.locator('.faultgrid tbody tr').count()).toBe(2);
    expect(await page.locator('.faultgrid tbody tr').first().innerText()).toContain('\u00d7');
    await page.getByLabel('only faults that change something').uncheck();
    expect(await page.locator('.faultgrid tbody tr').count()).toBe(3);
    expect(await page.locator('.runs').innerText()).toContain('T1 P.1 to S.1 shorted');
    expect(complaints).toEqual([]);
  });

  it('a cell opens what the fault does to output, person, fuse and fire, with its lines', async () => {
    const { page } = await openRuns();
    await cell(page, 'U2 open at led.1, no load: ended at a rating').click();
    const opened = page.locator('.opened-fault');
    await opened
      .getByRole('img', { name: /Output over 3\.30/ })
      .first()
      .waitFor();
    const text = await opened.innerText();
    expect(text).toContain('up to 16.3');
    expect(text).toContain('C7 beyond its rating of 16');
    expect(text).toContain('holds');
    await opened.getByRole('button', { name: 'close' }).click();
    expect(await opened.count()).toBe(0);
  });

  it('a case whose circuit nobody traced says what it needs and offers no run', async () => {
    const { page } = await openRuns('moss-trio');
    expect(await page.locator('.needs').innerText()).toContain('parts with pins that share nets');
    expect(await page.getByRole('button', { name: 'Run its operating points' }).count()).toBe(0);
  });

  it('a run shows how far it is, is stopped by its button, and then nothing is kept', async () => {
    const { page, complaints } = await openRuns();
    await page.getByRole('button', { name: 'Break every part once' }).click();
    await page.getByRole('progressbar').waitFor();
    expect(await page.getByRole('button', { name: 'Run its operating points' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped; nothing was kept.').waitFor();
    expect(await page.getByRole('progressbar').count()).toBe(0);
    await page.waitForFunction(() => !(document.querySelector('.run-begin .btn') as HTMLButtonElement).disabled);
    // what was kept before is still there
    await cell(page, 'U2 open at led.1, no load: ended at a rating').waitFor();
    expect(complaints).toEqual([]);
  }, 60_000);

  it.each([
    [1440, false],
    [390, true],
  ] as const)(
    'has no violation that axe finds at %d px, dark %s',
    async (width, dark) => {
      const { page } = await openRuns(CASE, { width, dark });
      await cell(page, 'U2 open at led.1, no load: ended at a rating').click();
      await page.locator('.opened-fault figure').first().waitFor();
      const { violations } = await new AxeBuilder({ page }).include('.runs').analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    },
    60_000,
  );
});
