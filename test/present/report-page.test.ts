import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { renderReport } from '../../src/present/report/render-report.ts';
import { type CasePatch, judge } from '../truth/build-case.ts';
import { label, PLAIN_DAY, plainMeter, sweep, usbPort } from '../truth/evidence-pieces.ts';
import { assessmentOf } from './build-assessment.ts';
import { fullAssessment } from './sample-assessment.ts';
import { CREEPAGE, CURVE } from './sample-findings.ts';

const CHROMIUM = '/usr/bin/chromium';
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
/** Name, label, one load sweep and two spots: what an evening at the bench gives. */
const SHORT_CASE: CasePatch = {
  product: { id: 'lantern', name: 'Lantern 10' },
  ports: [usbPort()],
  instruments: [plainMeter('0.02 V', { uAmpere: '0.01 A', uWatt: '0.05 W' })],
  days: [PLAIN_DAY],
  parts: [{ id: 't1', ref: 'T1', kind: 'transformer' }],
  places: [
    { id: 'case', name: 'case, top', outside: true, material: 'plastic' },
    { id: 'winding', name: 'winding', part: 't1', windingClass: 'B' },
  ],
  exhibits: [
    label({ input: { voltage: '100-240 V', frequency: '50/60 Hz', current: '0.4 A' }, class: 'II' }),
    sweep([
      ['0', '5.13', '0.05'],
      ['0.5', '5.08', '3.22'],
      ['1', '5.02', '6.35'],
      ['1.5', '4.96', '9.5'],
      ['2', '4.9', '12.7'],
      ['2.2', '4.6', '13.6'],
    ]),
    {
      id: 'spots-1',
      kind: 'spots',
      day: 'day-1',
      under: { loads: [{ port: 'usb', draws: '2 A' }], minutes: '90 min', ambient: '23 °C', cover: 'closed' },
      rows: [
        { id: 'a', place: 'case', value: '58 °C ± 2 °C', by: 'contact' },
        { id: 'b', place: 'winding', value: '92 °C ± 2 °C', by: 'contact' },
      ],
    },
  ],
};

/** Names as long as a person can paste, without a place to break. */
function longNames(): string {
  const long = 'Aquiteextraordinarilylongname'.repeat(6);
  const full = fullAssessment();
  const findings = full.findings.map((finding) =>
    finding.check === CREEPAGE.check ? { ...finding, about: long, fields: [long] } : finding,
  );
  return renderReport({
    ...full,
    case: { ...full.case, name: long, sample: long, id: long },
    setting: { ...full.setting, [long]: { value: long, from: 'case', source: null } },
    findings: findings.map((finding) => (finding.check === 'shock/bridging-part' ? { ...finding, measured: { word: long } } : finding)),
    curves: [{ ...CURVE, port: long, ends: long }],
    warnings: [{ key: long, at: long, args: {} }],
  });
}

const PAGES = { full: renderReport(fullAssessment()), empty: renderReport(assessmentOf()), long: longNames() } as const;
const WIDTHS = [390, 1440] as const;

let browser: Browser;
let folder: string;

describe('the report in a browser', () => {
  beforeAll(async () => {
    if (!existsSync(CHROMIUM))
      throw new Error(
        `This test looks at the report in Chromium, and ${CHROMIUM} is missing. Install the distribution's chromium package.`,
      );
    browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
    folder = await mkdtemp(join(tmpdir(), 'mainsworthy-report-'));
    for (const [name, page] of Object.entries(PAGES)) await writeFile(join(folder, `${name}.html`), page);
  });
  afterAll(async () => {
    await browser?.close();
    if (folder !== undefined) await rm(folder, { recursive: true, force: true });
  });

  for (const name of ['full', 'empty', 'long'] as const)
    for (const width of WIDTHS)
      for (const scheme of ['light', 'dark'] as const)
        it(`${name}, ${width} px wide, ${scheme}: fits its width, asks for nothing, complains of nothing and can be used by everyone`, async () => {
          const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme: scheme });
          const page = await context.newPage();
          const asked: string[] = [];
          const complaints: string[] = [];
          page.on('request', (request) => asked.push(request.url()));
          page.on('console', (message) => complaints.push(message.text()));
          const place = pathToFileURL(join(folder, `${name}.html`)).href;
          await page.goto(place);
          await page.evaluate('document.fonts.ready');
          expect(asked.filter((url) => url !== place && !url.startsWith('data:font/woff2'))).toEqual([]);
          expect(complaints).toEqual([]);
          expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
          expect(await page.evaluate('document.fonts.check("16px \\"Source Serif 4\\"")')).toBe(true);
          const { violations } = await new AxeBuilder({ page }).analyze();
          expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`)).toEqual([]);
          await context.close();
        });

  it('keeps both halves of the verdict side by side and of one height on a phone', async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 900 } });
    await page.goto(pathToFileURL(join(folder, 'full.html')).href);
    const [left, right] = await page
      .locator('.half')
      .evaluateAll((halves) =>
        halves
          .map((half) =>
            (
              half as unknown as { getBoundingClientRect(): { x: number; y: number; width: number; height: number } }
            ).getBoundingClientRect(),
          )
          .map(({ x, y, width, height }) => ({ x, y, width, height })),
      );
    expect(left!.y).toBe(right!.y);
    expect(left!.height).toBe(right!.height);
    expect(Math.abs(left!.width - right!.width)).toBeLessThan(1);
    expect(right!.x).toBeGreaterThan(left!.x + left!.width);
    await page.close();
  });

  it('of an empty case prints on few pages, with nothing wider than the paper', async () => {
    const FEW = 5;
    const PAPER = 661; // the width inside the margins, in CSS pixels
    const page = await browser.newPage({ viewport: { width: PAPER, height: 900 } });
    for (const name of ['empty', 'full'] as const) {
      await page.goto(pathToFileURL(join(folder, `${name}.html`)).href);
      await page.emulateMedia({ media: 'print' });
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(PAPER);
    }
    await page.goto(pathToFileURL(join(folder, 'empty.html')).href);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeLessThanOrEqual(FEW);
    await page.close();
  });

  it('of a short case holds at two pages before the derivation, and cuts no row', async () => {
    await writeFile(join(folder, 'short.html'), renderReport(judge(SHORT_CASE)));
    const page = await browser.newPage({ viewport: { width: 676, height: 900 } }); // the width inside the margins of a short report
    await page.goto(pathToFileURL(join(folder, 'short.html')).href);
    await page.emulateMedia({ media: 'print' });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(676);
    const uncut = '[...document.querySelectorAll(".find.one, .prow, table.d tr, figure, .caution")]';
    const breaks = (await page.evaluate(`${uncut}.map((one) => getComputedStyle(one).breakInside)`)) as string[];
    expect(new Set(breaks)).toEqual(new Set(['avoid']));
    const words = (await page.evaluate('document.querySelector("main").innerText')) as string;
    for (const said of [
      'not a certification',
      'Cannot be judged without a laboratory',
      'Nobody has looked yet',
      'Mains can kill',
      'What can only be measured now',
    ])
      expect(words).toContain(said);
    for (const id of ['derivation', 'sources', 'statement'])
      await page.locator(`section[aria-labelledby="part-${id}"]`).evaluateAll((all) => {
        for (const one of all) one.remove();
      });
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBe(2);
    await page.close();
  });

  it('prints on several A4 pages', async () => {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(folder, 'full.html')).href);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeGreaterThan(1);
    const [, width, height] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf) ?? [];
    const POINTS_PER_MM = 72 / 25.4;
    expect(Number(width) / POINTS_PER_MM).toBeCloseTo(210, 0);
    expect(Number(height) / POINTS_PER_MM).toBeCloseTo(297, 0);
    await page.close();
  });
});
