// node scripts/pictures.mjs: the picture in the README, and the reports of the demo cases as people see them (into out/pictures), to be looked at.
import { mkdirSync, readdirSync } from 'node:fs';
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
const SIZES = [
  { name: 'desk', width: 1440, height: 1600, scheme: 'light' },
  { name: 'dark', width: 1440, height: 1600, scheme: 'dark' },
  { name: 'phone', width: 390, height: 1800, scheme: 'light' },
];

if (!preparePackages() || !build() || !run(process.execPath, [join(ROOT, 'dist/cli/main.js'), 'demo', '-o', join(ROOT, 'out/demo')]))
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
await browser.close();
console.log(`pictures in ${folder} and docs/report.png`);
