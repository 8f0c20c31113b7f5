import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { type Running, runServer } from '../../src/server/run-server.ts';
import { mustOpen, scratchFolder } from '../store/scratch-casebook.ts';

const BUILT = fileURLToPath(new URL('../../dist/web', import.meta.url));
const PAGES = 110; // of 4 KiB: beyond them the disk counts as full
const LONG = 1900;
const MOST_EDITS = 1000;
const scratch = scratchFolder();
let browser: Browser;
let running: Running | null = null;
beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  });
});
afterAll(async () => {
  await browser.close();
  await running?.stop();
  scratch.drop();
});

async function start(port: number, mostPages?: number): Promise<URL> {
  const store = await mustOpen(scratch.path, { access: 'write', make: true, ...(mostPages === undefined ? {} : { mostPages }) });
  const one = await runServer({ store, pages: BUILT, port, host: '127.0.0.1' });
  if (isRefusal(one)) throw new Error(one.code);
  running = one;
  return new URL(one.links[0] ?? '');
}

it('says that the disk is full, keeps what was typed over a reload, and sends it when there is room', async () => {
  const base = await start(0, PAGES);
  const post = (path: string, body: object): Promise<Response> =>
    fetch(new URL(path, base), { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) });
  const { id } = (await (await post('/api/cases', { name: 'Quay cube', by: 'tab-1' })).json()) as { id: string };
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(new URL(`/case/${id}/sample`, base).href);
  const by = page.getByRole('textbox', { name: 'examined by' });
  await by.waitFor();
  // the other entries fill the disk
  let sample = 'A';
  let isFull = false;
  for (let base = 1; !isFull && base < MOST_EDITS; base += 1) {
    const next = `${base}`.padEnd(LONG, '.');
    const change = { at: '/case/sample', was: sample, to: next };
    isFull =
      (await post(`/api/cases/${id}/edits`, { by: 'tab-2', base, step: `s${base}`, name: { key: 'entry', args: {} }, changes: [change] }))
        .status === 507;
    sample = next;
  }
  expect(isFull).toBe(true);

  const long = 'Ada Quayle '.repeat(100);
  await by.fill(long);
  const told = page.getByText('The disk is full', { exact: false });
  await told.first().waitFor();
  expect(await told.first().innerText()).toContain('What was typed stays in this page');
  expect(await by.inputValue()).toBe(long);
  await page.reload();
  await by.waitFor();
  await expect.poll(() => by.inputValue()).toBe(long);

  await running?.stop();
  await start(Number(base.port));
  const kept = async (): Promise<string> => {
    const opened = (await (await fetch(new URL(`/api/cases/${id}`, base))).json()) as { state: { case: { examinedBy?: string } } };
    return opened.state.case.examinedBy ?? '';
  };
  await expect.poll(kept, { timeout: 20_000 }).toBe(long);
  expect(await by.inputValue()).toBe(long);
  await expect.poll(() => told.count()).toBe(0);
});
