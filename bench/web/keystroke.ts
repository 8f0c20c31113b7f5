/// <reference lib="dom" />
/**
 * From a key to the redrawn verdict, in headless Chromium on a real workspace: event time to the frame after the answer was drawn, on the
 * large bench case. Beside it, as reference, the same key in a plain entry of the same page. Run alone: `npm run build`, then
 * `npx tsx bench/web/keystroke.ts`.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright-core';
import { fell } from '../../scripts/demo/unit/fell.ts';
import { importFolder } from '../../src/app/casebook/import-folder.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { caseFolder } from '../../src/store/folder/case-folder.ts';
import { openCasebook } from '../../src/store/sqlite/open-casebook.ts';
import { largeCase } from '../large-case.ts';

const KEYS = 300;
const folder = mkdtempSync(join(tmpdir(), 'mainsworthy-keys-'));
const casebook = join(folder, 'bench.casebook');

async function fill(): Promise<string> {
  const document = largeCase() as { id: string; files: { path: string }[] };
  const { files } = fell();
  for (const { path } of document.files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), files[path] ?? '');
  }
  writeFileSync(join(folder, 'case.json'), JSON.stringify(document));
  const store = await openCasebook(casebook, { access: 'write', make: true });
  if (isRefusal(store)) throw new Error(JSON.stringify(store));
  const head = await importFolder(store, caseFolder(folder), { at: new Date().toISOString(), by: 'bench', step: 'fill' });
  await store.close();
  if (Array.isArray(head)) throw new Error(JSON.stringify(head));
  return head.id;
}

function serve(): Promise<{ link: string; stop: () => void }> {
  const child = spawn(process.execPath, ['dist/cli/main.js', 'serve', '--casebook', casebook, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return new Promise((resolve) => {
    child.stdout.on('data', (chunk: Buffer) => {
      const link = /workspace at (http:\S+)/.exec(chunk.toString())?.[1];
      if (link !== undefined) resolve({ link, stop: () => child.kill('SIGKILL') });
    });
  });
}

/** Types into the first entry that matches, and waits for the frame after what `drawn` looks at has changed. */
function typeKeys({ entry, drawn, keys }: { entry: string; drawn: string | null; keys: number }): Promise<number[]> {
  const input = document.querySelector<HTMLInputElement>(entry);
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
  if (input === null || set === undefined) throw new Error(`no entry ${entry}`);
  input.focus();
  const once = (key: number): Promise<number> =>
    new Promise((resolve) => {
      const start = performance.now();
      setTimeout(() => resolve(Number.NaN), 3000); // nothing moved: told as such below
      const done = (): void => {
        requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - start), 0));
      };
      if (drawn !== null) {
        const target = document.querySelector(drawn);
        const watch = new MutationObserver(() => {
          watch.disconnect();
          done();
        });
        if (target !== null) watch.observe(target, { subtree: true, childList: true, characterData: true, attributes: true });
      }
      set.call(input, `${60 + (key % 30)}.${key % 10} °C`);
      input.dispatchEvent(new Event('input', { bubbles: true }));
      if (drawn === null) done();
    });
  return (async () => {
    const times: number[] = [];
    for (let key = 0; key < keys; key += 1) {
      times.push(await once(key));
      await new Promise((resolve) => setTimeout(resolve, 40));
    }
    return times;
  })();
}

function print(name: string, times: readonly number[], reference?: number): number {
  const sorted = times.filter((time) => !Number.isNaN(time)).toSorted((a, b) => a - b);
  if (sorted.length < times.length) console.log(`${times.length - sorted.length} keys moved nothing`);
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
  const ratio = reference === undefined ? '' : `   ${(at(0.5) / reference).toFixed(1)} x the plain entry`;
  console.log(`${name.padEnd(52)} min ${at(0).toFixed(1)} ms   median ${at(0.5).toFixed(1)} ms   p95 ${at(0.95).toFixed(1)} ms${ratio}`);
  return at(0.5);
}

const id = await fill();
const { link, stop } = await serve();
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
const page = await browser.newPage({ viewport: { width: 1440, height: 1000 } });
await page.addInitScript('globalThis.__name = (work) => work;'); // the compiler of this script names functions with it
await page.goto(`${link}case/${id}/heat`);
await page.waitForSelector('.records input');
const entry = '.records td:has(> .hanging) input'; // a reading that decides a finding
await page.evaluate(typeKeys, { entry, drawn: '.verdict .all', keys: 20 }); // warm
await page.evaluate(() => {
  const plain = document.createElement('input');
  plain.id = 'plain';
  document.body.append(plain);
});
const plain = print('a key in a plain entry (reference)', await page.evaluate(typeKeys, { entry: '#plain', drawn: null, keys: KEYS }));
print(
  'key to redrawn verdict, target median 30, p95 80',
  await page.evaluate(typeKeys, { entry, drawn: '.verdict .all', keys: KEYS }),
  plain,
);
await browser.close();
stop();
rmSync(folder, { recursive: true, force: true });
