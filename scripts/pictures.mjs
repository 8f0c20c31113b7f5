// node scripts/pictures.mjs: the pictures in the README, and every report and page as people see them (into out/pictures), to be looked at.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build, preparePackages, ROOT, run } from './prepare.mjs';

const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const SETTLE_MS = 500;
const SIZES = [
  { name: 'desk', width: 1440, height: 1600, scheme: 'light' },
  { name: 'dark', width: 1440, height: 1600, scheme: 'dark' },
  { name: 'phone', width: 390, height: 1800, scheme: 'light' },
];

if (
  !preparePackages() ||
  !build() ||
  !run(process.execPath, [join(ROOT, 'dist/cli/main.js'), 'demo', '--once', '-o', join(ROOT, 'out/demo')])
)
  process.exit(1);
const folder = join(ROOT, 'out', 'pictures');
mkdirSync(folder, { recursive: true });
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
for (const file of readdirSync(join(ROOT, 'out/demo')).filter((name) => name.endsWith('.html'))) {
  for (const { name, width, height, scheme } of SIZES) {
    const page = await browser.newPage({ viewport: { width, height }, colorScheme: scheme });
    await page.goto(`file://${join(ROOT, 'out/demo', file)}`);
    await page.screenshot({ path: join(folder, file.replace('.html', `-${name}.png`)) });
    await page.close();
  }
}
const page = await browser.newPage({ viewport: { width: 900, height: 1180 }, deviceScaleFactor: 1.25 });
await page.goto(`file://${join(ROOT, 'out/demo/fell-12.html')}`);
await page.screenshot({ path: join(ROOT, 'docs/report.png') });
await page.close();

const PAGES = [
  '',
  'bench/fell-12',
  ...['sample', 'label', 'touch', 'load', 'heat', 'board', 'transformer', 'circuit', 'files', 'judgement', 'publish'].map(
    (chapter) => `case/fell-12/${chapter}`,
  ),
];
const { link, stop } = await serveDemo();
for (const path of PAGES)
  for (const { name, width, scheme } of SIZES) {
    const view = await browser.newPage({
      viewport: { width, height: width > 700 ? 1000 : 844 },
      colorScheme: scheme,
      reducedMotion: 'reduce',
    });
    await view.goto(link + path);
    await view.waitForLoadState('networkidle').catch(() => undefined);
    await view.waitForTimeout(SETTLE_MS);
    await view.screenshot({ path: join(folder, `${path === '' ? 'casebook' : path.replaceAll('/', '-')}-${name}.png`) });
    if (path === 'case/fell-12/load' && name === 'desk') await view.screenshot({ path: join(ROOT, 'docs/workspace.png') });
    await view.close();
  }
stop();
await browser.close();
console.log(`pictures in ${folder}, docs/report.png and docs/workspace.png`);

/** The four demo cases in a casebook of their own, served on any free port. */
async function serveDemo() {
  const casebook = join(mkdtempSync(join(tmpdir(), 'mainsworthy-pictures-')), 'demo.casebook');
  const command = join(ROOT, 'dist/cli/main.js');
  for (const name of readdirSync(join(ROOT, 'examples')))
    run(process.execPath, [command, 'import', join(ROOT, 'examples', name), '--casebook', casebook]);
  const server = spawn(process.execPath, [command, 'serve', '--casebook', casebook, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const address = await new Promise((resolve) => {
    server.stdout.on('data', (chunk) => {
      const found = /workspace at (http:\S+)/.exec(String(chunk))?.[1];
      if (found !== undefined) resolve(found);
    });
  });
  return { link: address, stop: () => server.kill('SIGTERM') };
}
