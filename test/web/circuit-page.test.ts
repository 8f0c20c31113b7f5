import { readFile } from 'node:fs/promises';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { INVENTED_CIRCUITS } from '../circuit/invented-circuits.ts';
import { openNewCase } from './open-new-case.ts';
import { startWorkspace, type TestPage, type TestWorkspace } from './start-workspace.ts';

let workspace: TestWorkspace;
beforeAll(async () => {
  workspace = await startWorkspace(['fell-12']);
});
afterAll(() => workspace.stop());

const LINES = INVENTED_CIRCUITS[0]!.lines;
const entry = (page: Page) => page.getByRole('textbox', { name: 'Circuit lines' });
const part = (page: Page, id: string) => page.locator(`[data-part="${id}"]`);
const card = (page: Page) => page.getByRole('complementary', { name: 'Chosen in the schematic' });

const openNew = (name: string): Promise<TestPage & { id: string }> => openNewCase(workspace, name, 'circuit');

async function takeLines(page: Page, lines: string): Promise<void> {
  await entry(page).fill(lines);
  await page.getByRole('button', { name: 'Take the lines' }).click();
}

/** Where the symbol of a part stands in the drawing, px of the page. */
async function placeOf(page: Page, id: string): Promise<{ x: number; y: number }> {
  const box = await part(page, id).boundingBox();
  if (box === null) throw new Error(`${id} is not drawn`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const drawnAgain = (page: Page): Promise<unknown> => page.waitForSelector('.schematic[aria-busy="false"]');

describe('the lines of a circuit', () => {
  it('become a drawing; a slip is said with its line, leads there, and the other lines count', async () => {
    const { page, complaints } = await openNew('Weir cube');
    const lines = `${LINES.trimEnd()}\nR99 4k7 9V9: OUT+\n`;
    await takeLines(page, lines);
    await part(page, 'r7').waitFor();
    const slip = page.locator('.circuitlines .remarks');
    const number = lines.trimEnd().split('\n').length;
    expect(await slip.innerText()).toContain(`line ${number}: `);
    await slip.getByRole('button', { name: `line ${number}` }).click();
    const picked = await entry(page).evaluate((area: HTMLTextAreaElement) => area.value.slice(area.selectionStart, area.selectionEnd));
    expect(picked).toBe('R99 4k7 9V9: OUT+');
    expect(await part(page, 'r99').count()).toBe(0);
    await takeLines(page, lines.replace('R99 4k7 9V9: OUT+', 'R99 4k7: OUT+, OUT-'));
    await part(page, 'r99').waitFor();
    expect(await slip.count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});

describe('a drawing that answers', () => {
  it('tells of a part that is clicked: value, job, nets, findings, and its line', async () => {
    const { page } = await workspace.page();
    await page.goto(`${workspace.link}case/fell-12/circuit`);
    await part(page, 'c1').click();
    const told = await card(page).innerText();
    expect(told).toMatch(/^C1\s+stores the rectified mains/);
    expect(told).toContain('22 µF');
    expect(told).toMatch(/bulk capacitor\s+92\.5 °C/); // read beside it in the heat chapter
    await card(page).getByRole('list', { name: 'Findings on C1' }).getByRole('button').first().click();
    await page.waitForSelector('.verdict .opened');
    await card(page).getByRole('button', { name: 'To its line' }).click();
    const picked = await entry(page).evaluate((area: HTMLTextAreaElement) => area.value.slice(area.selectionStart, area.selectionEnd));
    expect(picked).toMatch(/^C1 /);
    expect(await part(page, 'c1').locator('.mark .m-fail').count()).toBe(1);
  });

  it('lights a net up wherever it is pointed at, and by the keyboard', async () => {
    const { page } = await workspace.page();
    await page.goto(`${workspace.link}case/fell-12/circuit`);
    await part(page, 'c1').focus();
    await page.keyboard.press('Enter');
    const net = card(page).getByRole('list', { name: 'Pins of C1' }).getByRole('button').first();
    await net.focus();
    const lit = page.locator('.schematic .lit');
    expect(await lit.count()).toBeGreaterThan(0);
    const id = await lit.first().getAttribute('data-net');
    await page.keyboard.press('Enter');
    expect(await card(page).innerText()).toMatch(/^Net /);
    expect(await page.locator(`.schematic .lit[data-net="${id}"]`).count()).toBeGreaterThan(0);
    // from part to part with the arrows, one stop of the tab key for the whole drawing
    await part(page, 'c1').focus();
    await page.keyboard.press('ArrowRight');
    const next = await page.evaluate(() => (document.activeElement as unknown as SVGElement).dataset['part']);
    expect(next).not.toBe('c1');
    expect(await page.locator('.schematic [data-part][tabindex="0"]').count()).toBe(1);
  });

  it('keeps a part where it was dragged or nudged to, over a reload and a change of the circuit, outside of the case', async () => {
    const { page, id } = await openNew('Drag cube');
    await takeLines(page, LINES);
    await part(page, 'r2').waitFor();
    await drawnAgain(page);
    const before = await page.evaluate(
      async (name) => ((await (await fetch(`/api/cases/${name}`)).json()) as { head: { revision: number } }).head.revision,
      id,
    );
    await page.getByRole('button', { name: 'Move parts' }).click();
    const from = await placeOf(page, 'r2');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 30, from.y + 60, { steps: 4 });
    const redrawn = page.waitForResponse((response) => response.url().includes('/circuit/live') && response.request().method() === 'GET');
    await page.mouse.up();
    await page.getByRole('button', { name: 'put all 1 back' }).waitFor();
    await redrawn; // a key counts from where the part is drawn
    await drawnAgain(page);
    const corner = async (): Promise<readonly number[]> =>
      page.evaluate(async (name) => {
        const { drawing } = (await (await fetch(`/api/cases/${name}/circuit/live`)).json()) as {
          drawing: { places: { part: string; at: { x: number; y: number } }[] };
        };
        const at = drawing.places.find((one) => one.part === 'r2')!.at;
        return [at.x, at.y];
      }, id);
    const put = await corner();
    await part(page, 'r2').focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.waitForResponse((response) => response.url().includes('/circuit/live') && response.request().method() === 'GET');
    await drawnAgain(page);
    expect(await corner()).toEqual([put[0], put[1]! + 20]);
    expect(await page.evaluate(() => (document.activeElement as unknown as SVGElement).dataset['part'])).toBe('r2');
    await page.reload();
    await part(page, 'r2').waitFor();
    await takeLines(page, `${LINES}R98 1k: OUT+, OUT-\n`);
    await part(page, 'r98').waitFor();
    expect(await corner()).toEqual([put[0], put[1]! + 20]);
    const after = await page.evaluate(
      async (name) => ((await (await fetch(`/api/cases/${name}`)).json()) as { head: { revision: number } }).head.revision,
      id,
    );
    expect(after).toBe(before + 1); // the lines alone
    await page.getByRole('button', { name: 'put all 1 back' }).click();
    await page.getByRole('button', { name: 'put all 1 back' }).waitFor({ state: 'detached' });
  });

  it('goes out as a file and as a sheet for paper that loads nothing', async () => {
    const { page, complaints, requests } = await workspace.page();
    await page.goto(`${workspace.link}case/fell-12/circuit`);
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name: 'SVG' }).click()]);
    expect(download.suggestedFilename()).toBe('fell-12-schematic.svg');
    const [page3] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name: 'PDF, A3' }).click()]);
    expect(page3.suggestedFilename()).toBe('fell-12-schematic-A3.pdf');
    expect((await readFile(await page3.path(), 'latin1')).slice(0, 5)).toBe('%PDF-');
    await page.goto(`${workspace.link}api/cases/fell-12/circuit/sheet?paper=A3`);
    expect(await page.locator('svg.sch').count()).toBe(1);
    expect(await page.locator('.how').innerText()).toContain('A3');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.how').isVisible()).toBe(false);
    expect(requests.filter((url) => !url.startsWith(workspace.link) && !url.startsWith('data:'))).toEqual([]);
    expect(complaints).toEqual([]);
  });
});

describe('the page of a circuit', () => {
  it.each([
    ['light', 1440],
    ['dark', 1440],
    ['light', 390],
    ['dark', 390],
  ] as const)('has no fault that axe knows of, in %s at %i px, with a part chosen', async (ground, width) => {
    const { page } = await workspace.page({ dark: ground === 'dark', width, height: 900 });
    await page.goto(`${workspace.link}case/fell-12/circuit`);
    await part(page, 'c1').waitFor();
    await page.getByLabel('part', { exact: true }).selectOption('c1');
    await card(page).getByRole('heading', { name: 'C1' }).waitFor();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => ({ id, at: nodes.map(({ target }) => target) }))).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  });
});
