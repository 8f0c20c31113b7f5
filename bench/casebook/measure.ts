/// <reference lib="dom" />
/** How fluid the casebook stays with 10,000 cases: filling, first paint, filter, search, sort and scroll in headless Chromium, beside the same list as plain text. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { escapeText } from '../../src/present/markup/markup.ts';
import { openCasebook } from '../../src/store/sqlite/open-casebook.ts';
import { fill } from './fill.ts';
import { serveList } from './serve.ts';
import { makeVariants } from './variants.ts';

const CASES = Number(process.env['CASES'] ?? 10_000);
const VARIANTS_EACH = 50;
const ROUNDS = Number(process.env['ROUNDS'] ?? 21);
const BROWSER = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
const DESK = { width: 1440, height: 900 };
const SETTLE_MS = 60; // so that one change does not run into the next
const KB = 1000;
const MB = 1_000_000;

const kept = process.env['CASEBOOK']; // one that was filled before, to measure alone
const folder = mkdtempSync(join(tmpdir(), 'mainsworthy-bench-'));
const file = kept ?? join(folder, 'bench.casebook');
const opened = await openCasebook(file, kept === undefined ? { access: 'write', make: true } : { access: 'read' });
if (isRefusal(opened)) throw new Error(JSON.stringify(opened));
if (kept === undefined) {
  let began = performance.now();
  const variants = await makeVariants(opened, VARIANTS_EACH);
  console.log(`${variants.length} variants of the demo cases judged in ${seconds(began)} s`);
  began = performance.now();
  await fill(opened, variants, CASES);
  const each = ((performance.now() - began) / CASES).toFixed(2);
  console.log(
    `${CASES} cases filled through the save path in ${seconds(began)} s, ${each} ms a case, ${(statSync(file).size / MB).toFixed(0)} MB`,
  );
}

await build({ logLevel: 'error' });
const everything = await opened.cases.find({ sort: 'verdict', from: 0, count: CASES });
const lines = everything.rows.map(
  ({ summary }) => `<li>${escapeText(`${summary?.name} ${summary?.word} ${summary?.coverage.shock}`)}</li>`,
);
const plain = `<!doctype html><title>plain</title><meta charset="utf-8"><ol>${lines.join('')}</ol>`;
const { origin, stop } = await serveList(opened, plain);
const index = readFileSync('dist/web/index.html', 'utf8');
const first = readdirSync('dist/web/assets').filter((name) => name.endsWith('.js') && index.includes(name));
const scriptBytes = first.reduce((sum, name) => sum + gzipSync(readFileSync(join('dist/web/assets', name))).length, 0);
console.log(`JavaScript of the first page: ${(scriptBytes / KB).toFixed(0)} kB compressed, target under 300`);

if (!existsSync(BROWSER)) throw new Error(`no Chromium at ${BROWSER}: set CHROMIUM`);
const browser = await chromium.launch({ executablePath: BROWSER, args: ['--no-sandbox', '--disable-gpu'] });
try {
  const cold = async (path: string, ready: string): Promise<number> => {
    const context = await browser.newContext({ viewport: DESK }); // nothing cached
    const page = await context.newPage();
    await page.goto(origin + path, { waitUntil: 'commit' });
    await page.waitForSelector(ready);
    const painted = await page.evaluate(
      () => new Promise<number>((done) => requestAnimationFrame(() => setTimeout(() => done(performance.now()), 0))),
    );
    await context.close();
    return painted;
  };
  const reference = await rounds(() => cold('/plain', 'li:last-child'));
  tell('the same list as plain text (reference)', reference);
  tell('first page with its rows painted, under 1000 ms', await rounds(() => cold('/', '#unit-10 .chip')), reference);

  const page = await browser.newPage({ viewport: DESK });
  await page.addInitScript({ path: 'bench/casebook/changed-rows.js' });
  await page.goto(origin);
  await page.waitForSelector('#unit-10 .chip');
  const trip = await rounds(() => roundTrip(page));
  tell('asking for a filter, drawing nothing (reference)', trip);
  const filter = page.locator('.bar fieldset').first().locator('button');
  let turn = 0;
  // one word in, then out again: a small and a large answer in turn
  tell(
    'filter by failure, under 100 ms',
    await rounds(() => changed(page, async () => filter.nth(2 + (Math.floor(turn++ / 2) % 3)).click())),
    trip,
  );
  let letter = 0;
  tell(
    'a letter of the search',
    await rounds(() => changed(page, async () => page.locator('.search').fill(['b', 'beck 12', 'fell', 'mere 9', ''][letter++ % 5]!))),
    trip,
  );
  // the whole list again, nothing filtered
  await page.goto(origin);
  await page.waitForSelector('#unit-10 .chip');
  let sort = 1;
  tell(
    'another order',
    await rounds(() =>
      changed(page, async () =>
        page
          .locator('.bar fieldset')
          .nth(2)
          .locator('button')
          .nth(sort++ % 4)
          .click(),
      ),
    ),
    trip,
  );
  await page.locator('.bar select').first().selectOption('shock/creepage');
  await page.waitForTimeout(500);
  tell('to a far place of the list, until its rows are there', await rounds(() => jump(page)), trip);
} finally {
  await browser.close();
  stop();
  await opened.close();
  rmSync(folder, { recursive: true, force: true });
}

/** From the press to the frame after the answer's rows are in the page. */
async function changed(page: Page, act: () => Promise<void>): Promise<number> {
  const moves = page.evaluate('window.listMoves()') as Promise<number>;
  await act();
  const ms = await moves;
  if (ms < 0) throw new Error('the list did not change');
  await page.waitForTimeout(SETTLE_MS);
  return ms;
}

async function jump(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const began = performance.now();
    const rows = document.querySelector('.rows') as HTMLElement;
    window.scrollTo(0, Math.random() * rows.offsetHeight);
    for (;;) {
      await new Promise((next) => requestAnimationFrame(next));
      const shown = [...document.querySelectorAll('.unit')];
      const middle = shown.find((row) => row.getBoundingClientRect().top > innerHeight / 2);
      if (middle?.querySelector('.chip') != null) return performance.now() - began;
    }
  });
}

async function roundTrip(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const began = performance.now();
    await (await fetch('/api/casebook?failure=Dangerous&sort=verdict&from=0&count=40')).json();
    return performance.now() - began;
  });
}

async function rounds(work: () => Promise<number>): Promise<readonly number[]> {
  await work();
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) times.push(await work());
  return times.sort((a, b) => a - b);
}

function tell(name: string, times: readonly number[], reference?: readonly number[]): void {
  const at = (share: number): number => times[Math.min(times.length - 1, Math.floor(times.length * share))]!;
  const MOST = 0.95;
  const ratio = reference === undefined ? '' : `   ${(at(0.5) / reference[Math.floor(reference.length / 2)]!).toFixed(2)} × the reference`;
  console.log(`${name.padEnd(56)} min ${at(0).toFixed(0)} ms   median ${at(0.5).toFixed(0)} ms   p95 ${at(MOST).toFixed(0)} ms${ratio}`);
}

function seconds(since: number): string {
  return ((performance.now() - since) / KB).toFixed(1);
}
