import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawBoard, onBottom, SPOTS } from './board-pictures.ts';
import { startWorkspace, type TestPage, type TestWorkspace } from './start-workspace.ts';

let workspace: TestWorkspace;
let board: { top: Buffer; bottom: Buffer };
beforeAll(async () => {
  [workspace, board] = await Promise.all([startWorkspace([]), drawBoard()]);
});
afterAll(() => workspace.stop());

const STORY_MS = 120_000;
const stage = (page: Page, name: string) => page.getByRole('group', { name, exact: true });

/** A new case with both photos, at its circuit. */
async function openBoard(name: string, options: { width?: number; dark?: boolean } = {}): Promise<TestPage & { id: string }> {
  const opened = await workspace.page(options);
  const { page } = opened;
  await page.goto(workspace.link);
  const id = await page.evaluate(async (named) => {
    const response = await fetch('/api/cases', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ name: named, by: 'test' }),
    });
    return ((await response.json()) as { id: string }).id;
  }, name);
  await page.goto(`${workspace.link}case/${id}/files`);
  for (const [side, buffer] of Object.entries(board)) {
    await page.setInputFiles('input[type="file"]', { name: `${side}.png`, mimeType: 'image/png', buffer });
    await page.getByRole('button', { name: 'Take it into the case' }).click();
    await page.locator('.coming').waitFor({ state: 'detached' });
  }
  await page.waitForFunction(() => /^saved/.test(document.querySelector('.saved')?.textContent ?? ''));
  await page.goto(`${workspace.link}case/${id}/circuit`);
  await stage(page, 'Photo of the board').waitFor();
  return { ...opened, id };
}

/** Clicks a point of the picture in a window, px of the picture. */
async function clickAt(page: Page, name: string, [x, y]: readonly [number, number]): Promise<void> {
  const picture = stage(page, name).locator('img.photo').first();
  await picture.evaluate((image) => image.closest('.stage')?.scrollIntoView({ block: 'center' }));
  const box = (await picture.boundingBox())!;
  const wide = await picture.evaluate((image: HTMLImageElement) => image.naturalWidth);
  await page.mouse.click(box.x + (x * box.width) / wide, box.y + (y * box.width) / wide);
}

const padsOf = (page: Page, id: string) =>
  page.evaluate(async (name) => {
    const { state } = (await (await fetch(`/api/cases/${name}`)).json()) as {
      state: { case: { pads?: { photo: string; at: [number, number]; part?: string; pin?: string; net?: string }[] } };
    };
    return state.case.pads ?? [];
  }, id);

async function layOver(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Lay the other side over' }).click();
  for (const spot of SPOTS.slice(0, 4)) {
    await clickAt(page, 'top', spot);
    await clickAt(page, 'bottom', onBottom(spot));
  }
  await page.getByRole('button', { name: 'Lay bottom on top' }).click();
  await page.getByLabel('how much of the other side shows').waitFor();
}

describe('tracing on photos', () => {
  it(
    'both sides are laid over each other by four points, pads clicked on either become pins on nets, and their lines appear',
    async () => {
      const { page, id, complaints, requests } = await openBoard('Trace cube');
      await layOver(page);
      await page.getByLabel('trace net').fill('OUT+');
      await page.getByLabel('next pad is').fill('R7 1');
      await clickAt(page, 'Photo of the board', SPOTS[0]);
      await page.locator('[data-pad]').first().waitFor();
      await page.waitForFunction(() => /R7: OUT\+, \?/.test(document.querySelector('.circuitlines textarea')?.textContent ?? ''));
      // a pad is clicked first and named after, with the hands on the keyboard
      await page.getByLabel('trace net').fill('REF');
      await clickAt(page, 'Photo of the board', SPOTS[4]);
      const said = page.getByLabel('this pad is');
      await page.waitForFunction(
        () => document.activeElement?.closest('.chosenpad') !== null && document.activeElement?.tagName === 'INPUT',
      );
      await page.keyboard.type('R7 2');
      await page.keyboard.press('Enter');
      await page.waitForFunction(() => /R7: OUT\+, REF/.test(document.querySelector('.circuitlines textarea')?.textContent ?? ''));
      expect(await said.inputValue()).toBe('R7 2');
      // from the other side, at the same place of the board
      await page.getByLabel('how much of the other side shows').fill('20');
      await page.getByLabel('next pad is').fill('R8 1');
      await clickAt(page, 'Photo of the board', SPOTS[5]);
      await page.waitForFunction(() => /R8: REF, \?/.test(document.querySelector('.circuitlines textarea')?.textContent ?? ''));
      const [top, , other] = await padsOf(page, id);
      expect(top).toMatchObject({ part: 'r7', pin: '1' });
      expect(Math.hypot(top!.at[0] - SPOTS[0][0], top!.at[1] - SPOTS[0][1])).toBeLessThan(1.5);
      expect(other!.photo).not.toBe(top!.photo);
      const [x, y] = onBottom(SPOTS[5]);
      expect(Math.hypot(other!.at[0] - x, other!.at[1] - y)).toBeLessThan(1.5);
      // the schematic followed, and a net can be renamed
      await page.locator('[data-part="r8"]').waitFor();
      await page.getByLabel('name of net 2').fill('TAP');
      await page.keyboard.press('Enter');
      await page.waitForFunction(() => /R8: TAP, \?/.test(document.querySelector('.circuitlines textarea')?.textContent ?? ''));
      // a part nobody can name and a net nobody followed stay in sight
      await page.getByLabel('trace net').fill('');
      await clickAt(page, 'Photo of the board', SPOTS[2]);
      await page.getByRole('list', { name: 'Nets on the photos' }).getByText('net not known').waitFor();
      await page.reload();
      await page.getByRole('list', { name: 'Nets on the photos' }).getByText('part not known').waitFor();
      await page.waitForFunction(() => document.querySelectorAll('[data-pad]').length === 4);
      expect(requests.filter((url) => !url.startsWith(workspace.link) && !url.startsWith('blob:'))).toEqual([]);
      expect(complaints).toEqual([]);
    },
    STORY_MS,
  );

  it(
    'goes with the keyboard alone, says a pin that cannot be and keeps the pad, and one undo takes a pad back',
    async () => {
      const { page, id } = await openBoard('Key cube');
      await page.getByLabel('trace net').focus();
      await page.keyboard.press('Control+a');
      await page.keyboard.type('HV+');
      await page.getByLabel('next pad is').focus();
      await page.keyboard.type('R1 3');
      await stage(page, 'Photo of the board').focus();
      await page.keyboard.press('Shift+ArrowLeft');
      await page.keyboard.press('ArrowUp');
      expect(await page.locator('.stage-cross').count()).toBe(1);
      await page.keyboard.press('Enter');
      await page.locator('.phototrace > .trouble', { hasText: 'one of the pins 1, 2' }).waitFor();
      await page.waitForFunction(() => document.activeElement?.closest('.chosenpad') !== null);
      expect(await padsOf(page, id)).toMatchObject([{ net: 'hv-plus' }]);
      await page.keyboard.type('R1 2');
      await page.keyboard.press('Enter');
      await page.waitForFunction(() => /R1: \?, HV\+/.test(document.querySelector('.circuitlines textarea')?.textContent ?? ''));
      expect(await page.evaluate(() => document.activeElement?.classList.contains('stage-window'))).toBe(true);
      await page.keyboard.press('Control+z');
      await page.waitForFunction(() => document.querySelector('.netlist .pads')?.textContent === 'part not known');
      await page.keyboard.press('Control+z');
      await page.waitForFunction(() => document.querySelectorAll('[data-pad]').length === 0);
      await page.waitForFunction(() => document.querySelector('.circuitlines textarea')?.textContent === '');
    },
    STORY_MS,
  );

  it(
    'says so where lines were begun before a pad changed the circuit, so that taking them loses nothing unseen',
    async () => {
      const { page } = await openBoard('Two ways cube');
      await page.getByRole('textbox', { name: 'Circuit lines' }).fill('R1 1k: A, B');
      await page.getByRole('button', { name: 'Take the lines' }).click();
      await page.getByRole('button', { name: 'back to what the case holds' }).waitFor({ state: 'detached' });
      await page.getByRole('textbox', { name: 'Circuit lines' }).fill('R1 1k: A, B\nR2 2k: B, C');
      expect(await page.getByText('has changed since these lines were begun').count()).toBe(0);
      await page.getByLabel('trace net').fill('C');
      await page.getByLabel('next pad is').fill('R9 1');
      await clickAt(page, 'Photo of the board', SPOTS[0]);
      await page.getByText('has changed since these lines were begun').waitFor();
      await page.getByRole('button', { name: 'back to what the case holds' }).click();
      await page.waitForFunction(() => /R9: C, \?/.test(document.querySelector('.circuitlines textarea')?.textContent ?? ''));
      expect(await page.getByText('has changed since these lines were begun').count()).toBe(0);
    },
    STORY_MS,
  );

  it.each([
    ['light', 1440],
    ['dark', 390],
  ] as const)(
    'has no fault that axe knows of, in %s at %i px, and fits the page',
    async (ground, width) => {
      const { page } = await openBoard(`Axe ${ground}`, { dark: ground === 'dark', width });
      await page.getByLabel('next pad is').fill('R7 1');
      await clickAt(page, 'Photo of the board', SPOTS[0]);
      await page.locator('[data-pad]').first().waitFor();
      const look = async (): Promise<unknown> => {
        const { violations } = await new AxeBuilder({ page })
          .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
          .analyze();
        return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
      };
      expect(await look()).toEqual([]);
      await page.getByRole('button', { name: 'Lay the other side over' }).click();
      await stage(page, 'bottom').waitFor();
      expect(await look()).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
    },
    STORY_MS,
  );
});

describe('marks on photos', () => {
  it(
    'a scale of two points with a length, and a region with the place it shows, are drawn, kept and taken back',
    async () => {
      const { page, id } = await openBoard('Mark cube');
      await page.goto(`${workspace.link}case/${id}/files`);
      await stage(page, 'Marks on top').waitFor();
      await page.getByRole('button', { name: 'Set the scale' }).click();
      await clickAt(page, 'Marks on top', SPOTS[0]);
      await clickAt(page, 'Marks on top', SPOTS[1]);
      await page.getByLabel('how far apart').fill('40 V');
      await page.keyboard.press('Enter');
      await page.getByText('“40 V” is not a length').waitFor();
      await page.getByLabel('how far apart').fill('40 mm');
      await page.keyboard.press('Enter');
      await page.getByText('scale: 40 mm between its two ends').waitFor();
      await page.getByRole('button', { name: 'Draw a region' }).click();
      for (const spot of [SPOTS[0], SPOTS[1], SPOTS[3], SPOTS[2]]) await clickAt(page, 'Marks on top', spot);
      await page.getByLabel('which place').fill('bulk capacitor');
      await page.keyboard.press('Enter');
      await page.getByText('bulk capacitor: 4 corners').waitFor();
      await page.reload();
      await page.getByText('bulk capacitor: 4 corners').waitFor();
      await page.locator('.photo-mark polygon.line').waitFor();
      await page.keyboard.press('Control+z');
      await page.getByText('bulk capacitor: 4 corners').waitFor({ state: 'detached' });
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id: rule, nodes }) => `${rule}: ${nodes[0]?.html}`)).toEqual([]);
    },
    STORY_MS,
  );
});
