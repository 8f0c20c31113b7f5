/// <reference lib="dom" />
/**
 * A thermal picture of 640 × 480 in headless Chromium on a real workspace: from moving an end of the colours to the frame that shows it, and from
 * asking for the lines of equal temperature to their being there. Beside it, as reference, putting as many pixels on a canvas. Run alone: `npm run build`, then
 * `npx tsx bench/web/thermal-picture.ts`.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { line } from '../measure.ts';

const [WIDTH, HEIGHT, ROUNDS] = [640, 480, 25];
const folder = mkdtempSync(join(tmpdir(), 'mainsworthy-thermal-'));

const celsius = (x: number, y: number): number =>
  32 +
  50 * Math.exp(-((x - 260) ** 2 + (y - 240) ** 2) / 9000) +
  60 * Math.exp(-((x - 480) ** 2 + (y - 120) ** 2) / 900) +
  Math.sin(x / 9) * Math.cos(y / 7);
const file = Array.from({ length: HEIGHT }, (_, y) =>
  Array.from({ length: WIDTH }, (_unused, x) => celsius(x, y).toFixed(1)).join(';'),
).join('\n');

const child = spawn(process.execPath, ['dist/cli/main.js', 'serve', '--casebook', join(folder, 'bench.casebook'), '--port', '0'], {
  stdio: ['ignore', 'pipe', 'inherit'],
});
const link = await new Promise<string>((resolve) => {
  child.stdout.on('data', (chunk: Buffer) => {
    const found = /workspace at (http:\S+)/.exec(chunk.toString())?.[1];
    if (found !== undefined) resolve(found);
  });
});
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 1000 } });
  await page.goto(link);
  const id = await page.evaluate(async () => {
    const headers = { 'content-type': 'application/json' };
    const response = await fetch('/api/cases', { method: 'POST', headers, body: JSON.stringify({ name: 'Bench', by: 'bench' }) });
    return ((await response.json()) as { id: string }).id;
  });
  await page.goto(`${link}case/${id}/files`);
  await page.setInputFiles('input[type=file]', { name: 'large.csv', mimeType: 'text/plain', buffer: Buffer.from(`${file}\n`) });
  await page.getByLabel('its numbers are, after × and +').selectOption('°C');
  await page.getByRole('button', { name: 'Take it into the case' }).click();
  await page.locator('.isotherm').first().waitFor({ state: 'attached' });
  const measured = await page.evaluate(async (rounds) => {
    const slider = document.querySelector<HTMLInputElement>('.scale-bar input[type=range]');
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
    const layer = document.querySelector('.thermal .stage svg');
    const tick = document.querySelector<HTMLInputElement>('.thermal .tick input');
    const canvas = document.querySelector<HTMLCanvasElement>('.thermal .stage canvas');
    if (slider === null || set === undefined || layer === null || tick === null || canvas === null) throw new Error('no thermal picture');
    const [drawn, lines, plain]: number[][] = [[], [], []];
    for (let round = 0; round < rounds; round += 1) {
      await new Promise((resolve) => setTimeout(resolve, 200));
      const start = performance.now();
      set.call(slider, String(34 + round));
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
      drawn!.push(performance.now() - start);
      tick.click(); // lines off
      await new Promise((resolve) => setTimeout(resolve, 100));
      const asked = performance.now();
      const there = new Promise<number>((resolve) => {
        const watch = new MutationObserver(() => {
          if (layer.querySelector('.isotherm path') === null) return;
          watch.disconnect();
          resolve(performance.now() - asked);
        });
        watch.observe(layer, { subtree: true, childList: true });
      });
      tick.click(); // and on again
      lines!.push(await there);
      const context = canvas.getContext('2d')!;
      const then = performance.now();
      context.putImageData(context.createImageData(canvas.width, canvas.height), 0, 0);
      plain!.push(performance.now() - then);
    }
    return { drawn: drawn!, lines: lines!, plain: plain! };
  }, ROUNDS);
  const told = (times: readonly number[]) => {
    const sorted = times.toSorted((a, b) => a - b);
    return {
      min: sorted[0]!,
      median: sorted[sorted.length >> 1]!,
      spread: sorted[Math.floor(sorted.length * 0.75)]! - sorted[Math.floor(sorted.length * 0.25)]!,
    };
  };
  const plain = told(measured.plain);
  console.log(line('as many blank pixels put on a canvas (reference)', plain));
  console.log(line('640 × 480 drawn at another scale, target < 50', told(measured.drawn), { name: 'blank', median: plain.median }));
  console.log(line('its lines of equal temperature, target < 300', told(measured.lines)));
} finally {
  await browser.close();
  child.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
}
