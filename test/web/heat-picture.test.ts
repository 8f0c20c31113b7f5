import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkspace, type TestWorkspace } from './start-workspace.ts';

let workspace: TestWorkspace;
beforeAll(async () => {
  workspace = await startWorkspace();
});
afterAll(() => workspace.stop());

const WIDTH = 160;
const HEIGHT = 120;
/** An opened adapter, invented: a warm transformer and a hotter small part on a board at 35 °C. */
const celsius = (x: number, y: number): number =>
  35 + 45 * Math.exp(-((x - 60) ** 2 + (y - 60) ** 2) / 800) + 62 * Math.exp(-((x - 120) ** 2 + (y - 40) ** 2) / 60);
const field = Array.from({ length: HEIGHT }, (_, y) => Array.from({ length: WIDTH }, (_, x) => celsius(x, y).toFixed(1)).join('\t')).join(
  '\n',
);

async function saved(page: Page): Promise<void> {
  await page.waitForFunction(() => /^saved/.test(document.querySelector('.saved')?.textContent ?? ''));
}

async function newCase(page: Page, name: string): Promise<string> {
  await page.goto(workspace.link);
  return page.evaluate(async (named) => {
    const response = await fetch('/api/cases', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ name: named, by: 'test' }),
    });
    return ((await response.json()) as { id: string }).id;
  }, name);
}

/** Where a pixel of the picture is on the screen. */
async function onScreen(page: Page, [x, y]: [number, number]): Promise<[number, number]> {
  await page.locator('.thermal .stage').first().scrollIntoViewIfNeeded();
  const box = (await page.locator('.thermal .stage svg').first().boundingBox())!;
  return [box.x + (x / WIDTH) * box.width, box.y + (y / HEIGHT) * box.height];
}

describe('a thermal picture from the camera to a finding', () => {
  it('is dropped, marked by mouse and by keys, laid over its photo, and read', async () => {
    const { page, complaints, requests } = await workspace.page();
    const id = await newCase(page, 'Heat story');
    await page.goto(`${workspace.link}case/${id}/files`);
    await page.setInputFiles('input[type=file]', { name: 'warm.tsv', mimeType: 'text/plain', buffer: Buffer.from(`${field}\n`) });
    await page.getByText('A field of 160 by 120 numbers').waitFor();
    // nothing is guessed: without its unit it cannot be taken
    const take = page.getByRole('button', { name: 'Take it into the case' });
    expect(await take.isDisabled()).toBe(true);
    await page.getByLabel('its numbers are, after × and +').selectOption('°C');
    await take.click();
    await page.waitForURL(/heat$/);
    await page.locator('.thermal canvas').first().waitFor();
    await page.locator('.isotherm').first().waitFor({ state: 'attached' });

    // the picture is read where one points
    const [hx, hy] = await onScreen(page, [120.5, 40.5]);
    await page.mouse.move(hx, hy);
    expect(await page.locator('.thermal .readout').innerText()).toBe(
      `column 120, row 40: ${celsius(120, 40).toFixed(1)} °C as the camera shows it`,
    );

    // a rectangle by mouse
    await page.getByRole('button', { name: 'rectangle' }).click();
    const [ax, ay] = await onScreen(page, [105, 28]);
    const [bx, by] = await onScreen(page, [135, 52]);
    await page.mouse.move(ax, ay);
    await page.mouse.down();
    await page.mouse.move(bx, by, { steps: 4 });
    await page.mouse.up();
    await saved(page);
    await page.getByLabel('place of region 1').waitFor();
    await page.waitForFunction(() => document.querySelector('.regions tbody td.num')?.textContent !== '');
    expect(await page.locator('.regions tbody tr').first().locator('td.num').first().innerText()).toBe(celsius(120, 40).toFixed(1));

    // what it is of decides what the number means: bare metal is refused, plastic is read
    const chosen = page.locator('.chosen-region');
    await chosen.getByLabel('what the camera looks at', { exact: true }).selectOption('tinned');
    await page.getByLabel('emissivity set in the camera', { exact: true }).fill('0.95');
    await page.keyboard.press('Tab');
    await saved(page);
    await page.locator('.regions', { hasText: 'bare metal' }).waitFor();
    await chosen.getByLabel('what the camera looks at', { exact: true }).selectOption('partOnBoard');
    await page
      .locator('.each', { hasText: 'Thermal pictures' })
      .getByLabel('what is reflected there', { exact: true })
      .last()
      .fill('25 °C');
    await page.keyboard.press('Tab');
    await saved(page);
    await page.locator('.regions .from').first().waitFor();
    await page.locator('.regions .from').first().click();
    // it leads to the emissivity by which the surface was read
    await page.locator('.origin', { hasText: /emissivity/i }).waitFor();

    // an ellipse by keys alone: the tool, the cross to one corner, Enter, to the other, Enter
    await page.getByRole('button', { name: 'ellipse' }).focus();
    await page.keyboard.press('Enter');
    for (let k = 0; k < 3; k += 1) await page.keyboard.press('Shift+ArrowLeft');
    await page.keyboard.press('Enter');
    for (let k = 0; k < 2; k += 1) await page.keyboard.press('Shift+ArrowRight');
    for (let k = 0; k < 2; k += 1) await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByLabel('place of region 2').waitFor();
    // and moved by keys
    const region = page.locator('[data-region]').nth(1);
    const before = await region.getAttribute('points');
    await region.focus();
    await page.keyboard.press('Shift+ArrowUp');
    await saved(page);
    expect(await region.getAttribute('points')).not.toBe(before);

    // the photo under it: three points on both
    const photo = await sharp({ create: { width: 320, height: 240, channels: 3, background: '#3c6e47' } })
      .png()
      .toBuffer();
    await page.goto(`${workspace.link}case/${id}/files`);
    await page.setInputFiles('input[type=file]', { name: 'board.png', mimeType: 'image/png', buffer: photo });
    await page.getByRole('button', { name: 'Take it into the case' }).click();
    await saved(page);
    await page.goto(`${workspace.link}case/${id}/heat`);
    await page.locator('.thermal canvas').first().waitFor();
    await page.locator('.each', { hasText: 'Thermal pictures' }).getByText('when, files, note').click();
    await page.getByLabel('photo', { exact: true }).selectOption({ index: 1 });
    const add = page.getByRole('button', { name: '+ a point on both' });
    for (let k = 0; k < 3; k += 1) {
      await add.click();
      await saved(page);
    }
    await page.locator('.thermal .under').waitFor();
    // the photo is twice as fine: laid under the picture it is scaled by a half
    const laid = await page.locator('.thermal .under').evaluate((image) => image.getBoundingClientRect().width);
    const stage = await page
      .locator('.thermal .stage svg')
      .first()
      .evaluate((svg) => svg.getBoundingClientRect().width);
    expect(Math.abs(laid - stage)).toBeLessThan(2);
    await page.getByRole('button', { name: 'point 1 on the thermal picture: arrow keys move it' }).focus();
    await page.keyboard.press('Shift+ArrowRight');
    await saved(page);
    const moved = await page.locator('.thermal .under').evaluate((image) => image.getBoundingClientRect().width);
    expect(Math.abs(moved - stage)).toBeGreaterThan(2);

    expect(requests.filter((url) => !url.startsWith(workspace.link) && !url.startsWith('blob:'))).toEqual([]);
    expect(complaints).toEqual([]);
  }, 60_000);

  it.each([false, true])('has no barrier that axe can find (dark: %s)', async (dark) => {
    const { page } = await workspace.page({ dark });
    const cases = await page.goto(workspace.link).then(() => page.evaluate(async () => (await fetch('/api/casebook')).json()));
    const id = (cases as { rows: { head: { id: string } }[] }).rows[0]!.head.id;
    await page.goto(`${workspace.link}case/${id}/heat`);
    await page.locator('.thermal canvas').first().waitFor();
    await page.locator('[data-region]').first().focus();
    const { violations } = await new AxeBuilder({ page }).include('.thermal').analyze();
    expect(violations.map(({ id: rule, nodes }) => `${rule}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`)).toEqual([]);
  });
});
