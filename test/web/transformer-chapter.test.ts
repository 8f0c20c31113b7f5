import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openNewCase } from './open-new-case.ts';
import { startWorkspace, type TestPage, type TestWorkspace } from './start-workspace.ts';

let workspace: TestWorkspace;
beforeAll(async () => {
  workspace = await startWorkspace(['beck-5', 'fell-12', 'tarn-30']);
});
afterAll(() => workspace.stop());

const openNew = (name: string): Promise<TestPage & { id: string }> => openNewCase(workspace, name, 'transformer');

async function openChapter(id: string): Promise<TestPage> {
  const opened = await workspace.page();
  await opened.page.goto(`${workspace.link}case/${id}/transformer`);
  await opened.page.waitForSelector('.layer-list');
  return opened;
}

async function saved(page: Page): Promise<void> {
  await page.waitForFunction(() => /^saved/.test(document.querySelector('.saved')?.textContent ?? ''));
}

const press = async (page: Page, ...keys: readonly string[]): Promise<void> => {
  for (const key of keys) {
    await page.keyboard.press(key);
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
  }
};

/** Puts the focus where a person gets with Tab alone. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let tries = 0; tries < 400; tries += 1) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not reach ${selector}`);
}

/** Layers as they stand in the list: what each is called and its two numbers. */
const listed = (page: Page): Promise<string[]> =>
  page
    .locator('.layer-list ol > li')
    .evaluateAll((rows) =>
      rows.map((row) =>
        [
          row.querySelector('.pick span')?.textContent,
          ...[...row.querySelectorAll<HTMLInputElement>('.numbers input[type="text"]')].map(({ value }) => value),
        ].join(' | '),
      ),
    );

const turnsDrawn = (page: Page): Promise<number> => page.locator('.cross-section .wide circle.turn').count();

describe('a transformer that comes apart', () => {
  it('is typed with single keys from nothing, and its cross-section is drawn with every one of them', async () => {
    const { page, complaints } = await openNew('Key cube');
    await tabTo(page, '.each .tabs .add');
    await press(page, 'Enter');
    await page.waitForFunction(() => document.activeElement?.closest('.next-layer') !== null);
    await press(page, 't', 'Space');
    await expect.poll(() => listed(page)).toEqual(['insulation | 2 | ']);
    await press(page, 'w', ...Array.from({ length: 9 }, () => 'Space'));
    await page.waitForFunction(() => document.querySelectorAll('.cross-section .wide circle.turn').length === 9);
    await press(page, 'Backspace');
    await page.waitForFunction(() => document.querySelectorAll('.cross-section .wide circle.turn').length === 8);
    await press(page, 't', 'w', ...Array.from({ length: 4 }, () => 'Space'), 'l');
    await expect.poll(() => listed(page)).toEqual(['insulation | 2 | ', 'W1 | 8 | ', 'insulation | 1 | ', 'W2 | 4 | ']);
    await saved(page);
    expect(await page.getByLabel('rows', { exact: true }).inputValue()).toBe('2');
    expect(complaints).toEqual([]);
  });

  it('takes numbers one after the other with Enter, and asks for the thickness of a wall at once', async () => {
    const { page } = await openNew('Enter cube');
    await tabTo(page, '.each .tabs .add');
    await press(page, 'Enter', 'w', 't', 'w');
    // back to the outermost, a digit begins its number
    await tabTo(page, '.layer-list .pick');
    await press(page, 'ArrowUp', 'ArrowUp', '3');
    await page.keyboard.type('6');
    await press(page, 'Enter');
    await page.keyboard.type('0.25 mm');
    await press(page, 'Enter');
    await page.keyboard.type('3');
    await press(page, 'Enter');
    await page.keyboard.type('0.05 mm');
    await press(page, 'Enter');
    await page.keyboard.type('12');
    await press(page, 'Enter');
    await page.keyboard.type('0,4 mm');
    await press(page, 'Enter');
    await expect.poll(() => listed(page)).toEqual(['W1 | 36 | 0.25 mm', 'insulation | 3 | 0.05 mm', 'W2 | 12 | 0,4 mm']);
    expect(await page.evaluate(() => document.activeElement?.closest('.next-layer') !== null)).toBe(true);
    await press(page, 'f');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('wall of the former: thickness of each');
    await page.keyboard.type('0.8 mm');
    await saved(page);
    expect((await listed(page)).at(-1)).toBe('wall of the former | 1 | 0.8 mm');
  });

  it('knows the five states of a count: nobody looked, counted, lost with its reason, and a lost count is not gone on with', async () => {
    const { page } = await openNew('State cube');
    await tabTo(page, '.each .tabs .add');
    await press(page, 'Enter', 'w');
    const turns = page.locator('.layer-list ol > li [data-place$="/turns"]');
    await turns.focus();
    await page.keyboard.type('?');
    await press(page, 'Tab');
    await page.locator('.layer-list [data-place$="/turns/because"]').fill('tape tore the outer turns off');
    await saved(page);
    expect(await page.locator('.layer-list .is-unknown').count()).toBe(1);
    expect(await page.locator('.count-key').isDisabled()).toBe(true);
    expect(await page.locator('.counter .count').innerText()).toMatch(/^\?/);
  });

  it('goes back one step at a time, layers move and go, and all of it can be taken back', async () => {
    const { page } = await openNew('Undo cube');
    await tabTo(page, '.each .tabs .add');
    await press(page, 'Enter', 'w', 'Space', 't');
    await press(page, 'Alt+ArrowUp');
    await expect.poll(() => listed(page)).toEqual(['insulation | 1 | ', 'W1 | 1 | ']);
    await press(page, 'Delete');
    await expect.poll(() => listed(page)).toEqual(['W1 | 1 | ']);
    await saved(page);
    for (const rows of [2, 2, 1]) {
      await page.keyboard.press('Control+z');
      await page.waitForFunction((count) => document.querySelectorAll('.layer-list ol > li').length === count, rows);
    }
    await expect.poll(() => listed(page)).toEqual(['W1 | 1 | ']);
  });

  it('takes a photo of the layer at hand, which then stands beside it', async () => {
    const { page } = await openNew('Photo cube');
    await tabTo(page, '.each .tabs .add');
    await press(page, 'Enter', 'w');
    const buffer = await sharp({ create: { width: 640, height: 480, channels: 3, background: '#886644' } })
      .jpeg()
      .toBuffer();
    await page.locator('.layer-photo input[type="file"]').setInputFiles({ name: 'w1.jpg', mimeType: 'image/jpeg', buffer });
    await page.waitForFunction(() => (document.querySelector<HTMLImageElement>('.layer-photo img')?.naturalWidth ?? 0) > 0);
    expect(await page.locator('.layer-photo select option:checked').innerText()).toBe('layer W1');
  });
});

describe('what a transformer comes to', () => {
  it('marks the weakest place of an invented cube and leads from it to both layers', async () => {
    const { page } = await openChapter('beck-5');
    expect(await page.locator('.cross-section .wide path.way').count()).toBe(1);
    const weakest = page.locator('.cross-section .weakest');
    expect(await weakest.innerText()).toMatch(/^\s*Weakest .+, .*secondary.*: (bridged|absent|below basic)/);
    await weakest.getByRole('button', { name: 'secondary', exact: true }).click();
    await page.waitForFunction(() => document.activeElement?.matches('#layer-s .pick') === true);
    expect(await page.locator('.layer-detail h4').first().innerText()).toBe('secondary');
    expect(await page.locator('.cross-section [data-layer="s"].on').count()).toBeGreaterThan(0);
  });

  it('leads from every number to its origin, and from what is missing to its entry', async () => {
    const { page } = await openChapter('fell-12');
    await page.getByRole('button', { name: 'where flux density at the limit comes from' }).click();
    await page.locator('.origin h3').waitFor();
    expect((await page.locator('.origin h3').innerText()).replaceAll('\u00a0', ' ')).toMatch(/^Where 266 ± 7 mT comes from$/);
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'where flux density at the limit comes from',
    );
    await page.locator('.blocked').getByRole('button', { name: 'a ferrite whose loss is published' }).click();
    await page.waitForFunction(() => document.querySelector('.layer-detail')?.getAttribute('aria-label') === 'Core and former');
  });

  it('tells the barrier in sentences whose pieces lead to what they stand on', async () => {
    const { page } = await openChapter('fell-12');
    const lines = page.locator('.barrier-lines');
    expect(await lines.locator('dt').allInnerTexts()).toEqual(['Weakest path', 'Fewest failures', 'Every path goes through']);
    await lines
      .getByRole('button', { name: /T1: primary, outer half to secondary, round the edge of the tape/ })
      .first()
      .click();
    await page.waitForFunction(() => /outsideIn\/(?:p2|s)\/margins/.test(document.activeElement?.getAttribute('data-place') ?? ''));
  });

  it('moves a finding when a margin is typed, and names the weakest pair anew', async () => {
    const { page } = await openChapter('tarn-30');
    const before = await page.locator('.cross-section .weakest').innerText();
    await page.locator('#layer-s .pick').click();
    const covers = page.locator('.layer-detail').getByText('enamelled', { exact: true });
    await covers.click();
    await page.waitForFunction((old) => document.querySelector('.cross-section .weakest')?.textContent?.trim() !== old.trim(), before);
    await page.keyboard.press('Control+z');
  });
});

describe('what cannot be right', () => {
  const saidAt = (page: Page, place: string) => page.locator(`.entry:has([data-place$="${place}"]) .said`);

  it('is said in one sentence at its field, and the rest of the chapter works on', async () => {
    const { page } = await openChapter('fell-12');
    await page.locator('#layer-s [data-place$="/turns"]').fill('0');
    await expect
      .poll(() => saidAt(page, '/outsideIn/s/turns').innerText())
      .toBe('The winding secondary cannot have 0 turns; it is taken as not counted.');
    await page.locator('#layer-tape-p2-s [data-place$="/each"], #layer-tape-p2-s [data-place$="/each/v"]').fill('-0.05 mm');
    await expect
      .poll(() => saidAt(page, '/outsideIn/tape-p2-s/each').innerText())
      .toMatch(/^“-0.05 mm” is not .*not below zero.* Kept as typed/);
    await page.locator('[id="layer-+core"] .pick').click();
    await page.locator('.layer-detail [data-place$="/core"]').fill('XX 99');
    await expect.poll(() => saidAt(page, '/core').innerText()).toMatch(/^The core "XX 99" is not in the table/);
    // the map of the insulation still stands, and so does the drawing
    expect(await turnsDrawn(page)).toBeGreaterThan(0);
    expect(await page.locator('.pair-findings li').count()).toBeGreaterThan(0);
  });

  it('a lead-out over a layer that is no longer there, and a winding with an end on either side', async () => {
    const { page } = await openChapter('fell-12');
    await page.locator('#layer-p2 .pick').click();
    await press(page, 'Delete');
    await page.locator('#layer-s .pick').click();
    await expect
      .poll(() => page.locator('.lead-outs .remark').innerText())
      .toBe('A lead-out of secondary crosses "p2", which is no layer of this stack.');
    await page.getByRole('button', { name: 'enter both' }).click();
    await page.getByLabel('its start goes to', { exact: true }).selectOption({ label: 'bulk minus' });
    await page.getByLabel('its finish goes to', { exact: true }).selectOption({ label: 'output plus' });
    await expect
      .poll(() => page.locator('.layer-detail > .remark').innerText())
      .toMatch(/^The winding secondary stands on both sides of the barrier/);
  });
});

const AXE_MS = 240_000; // three places in two lights, each looked through whole

describe('the chapter for everybody', () => {
  for (const dark of [false, true])
    it(
      `has no fault that axe finds, ${dark ? 'dark' : 'light'}`,
      async () => {
        const { page, complaints } = await workspace.page({ dark });
        await page.goto(`${workspace.link}case/beck-5/transformer`);
        await page.waitForSelector('.layer-list');
        for (const row of ['[id="layer-s"]', '[id="layer-+core"]', '[id="layer-+drive"]', '[id="layer-tape-s-p"]']) {
          await page.locator(`${row} .pick`).click();
          const { violations } = await new AxeBuilder({ page })
            .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
            .analyze();
          expect(violations.map(({ id, nodes }) => `${row}: ${id}: ${nodes[0]?.html}`)).toEqual([]);
        }
        expect(complaints).toEqual([]);
      },
      AXE_MS,
    );

  it('fits a phone: nothing is wider than the page, the cross-section stands above the list', async () => {
    const { page } = await workspace.page({ width: 390, height: 844 });
    await page.goto(`${workspace.link}case/tarn-30/transformer`);
    await page.waitForSelector('.layer-list');
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
    const [figure, list] = await Promise.all(['.cross-section', '.layer-list'].map((one) => page.locator(one).boundingBox()));
    expect(figure?.y ?? 0).toBeLessThan(list?.y ?? 0);
  });
});
