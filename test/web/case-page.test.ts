import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openNewCase } from './open-new-case.ts';
import { startWorkspace, type TestPage, type TestWorkspace } from './start-workspace.ts';

let workspace: TestWorkspace;
beforeAll(async () => {
  workspace = await startWorkspace(['beck-5', 'fell-12', 'moss-trio', 'tarn-30']);
});
afterAll(() => workspace.stop());

const failureWord = (page: Page): Promise<string> => page.locator('.verdict .half').first().locator('.word').innerText();

const openNew = (name: string): Promise<TestPage & { id: string }> => openNewCase(workspace, name, 'load');

async function saved(page: Page): Promise<void> {
  await page.waitForFunction(() => /^saved/.test(document.querySelector('.saved')?.textContent ?? ''));
}

async function typeSweep(page: Page, rows: readonly (readonly string[])[]): Promise<void> {
  await page.click('text="+ sweep"');
  await page.click('table.read input[data-row="0"][data-column="0"]');
  for (const [current = '', voltage = ''] of rows) {
    await page.keyboard.type(current);
    await page.keyboard.press('Tab');
    await page.keyboard.type(voltage);
    await page.keyboard.press('Enter');
  }
  await saved(page);
}

async function addLevel(page: Page, id: string, voltage: string): Promise<void> {
  await page.goto(`${workspace.link}case/${id}/sample`);
  await page.click('[aria-label="more about out-1"]');
  await page.click('text="+ levels"');
  const below = page.locator('.below');
  await below.getByLabel('voltage', { exact: true }).fill(voltage);
  await below.getByLabel('printed current', { exact: true }).fill('2 A');
  await saved(page);
}

const ROWS = [
  ['0', '5.10'],
  ['0.5', '5.05'],
  ['1.0', '5.00'],
  ['1.5', '4.60'],
  ['2.0', '4.10'],
] as const;

describe('a case typed from nothing', () => {
  it('shows both words before anything is known, and they move as a load sweep and its claim are typed', async () => {
    const { page, id, complaints, requests } = await openNew('Quay cube');
    expect(await failureWord(page)).toContain('No verdict yet');
    await typeSweep(page, ROWS);
    await addLevel(page, id, '5 V');
    await page.locator('.records select').first().selectOption('usbA');
    await saved(page);
    await page.goto(`${workspace.link}case/${id}/load`);
    await page.waitForFunction(() => document.querySelector('.half .word')?.textContent?.includes('Below its claims'));
    // every number of the page came from this machine
    expect(requests.filter((url) => !url.startsWith(workspace.link) && !url.startsWith('blob:'))).toEqual([]);
    expect(complaints).toEqual([]);
  });

  it('leads from a number to its formula, from there to the reading, and back', async () => {
    const { page } = await workspace.page();
    await page.goto(`${workspace.link}case/fell-12/load`);
    await page.getByRole('button', { name: 'where Current held, Output, 12 V comes from' }).click();
    const origin = page.locator('.origin');
    await origin.locator('h3').waitFor();
    expect((await origin.locator('h3').innerText()).replaceAll('\u00a0', ' ')).toBe('Where 1.786 ± 0.009 A comes from');
    expect(await origin.locator('.eq').innerText()).toContain('=');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H3');
    await origin.locator('table.inputs .from').first().click();
    await page.waitForFunction(() => /Read from/.test(document.querySelector('.origin')?.textContent ?? ''));
    await page.keyboard.press('Escape');
    expect(await page.locator('.origin').count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toContain('Current held');
  });

  it('loses nothing when the lid closes in the middle of an edit', async () => {
    const { page, id } = await openNew('Lid cube');
    await typeSweep(page, ROWS);
    await workspace.kill();
    await page.click('table.read input[data-row="5"][data-column="0"]');
    await page.keyboard.type('2.2');
    await page.waitForFunction(() => document.querySelector('.saved .trouble') !== null);
    await workspace.restart();
    await saved(page);
    const other = await workspace.page();
    await other.page.goto(`${workspace.link}case/${id}/load`);
    await other.page.waitForSelector('table.read');
    const cells = await other.page
      .locator('table.read input[data-column="0"]')
      .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
    expect(cells).toEqual(['0', '0.5', '1.0', '1.5', '2.0', '2.2', '']);
  });

  it('keeps a text it does not understand in its field, marked, over a reload, and never blames', async () => {
    const { page, id } = await openNew('Slip cube');
    await page.goto(`${workspace.link}case/${id}/label`);
    await page.click('text="+ body and plug"');
    const mass = page.getByLabel('mass', { exact: true });
    await mass.fill('31 mm');
    await page.waitForSelector('.entry.wrong');
    await page.reload();
    await page.waitForSelector('.entry.wrong');
    expect(await page.getByLabel('mass', { exact: true }).inputValue()).toBe('31 mm');
    expect(await page.locator('.entry.wrong .said').innerText()).toMatch(/“31 mm” is not .* Kept as typed, left out of the judgement\./);
    await page.getByLabel('mass', { exact: true }).fill('31 g');
    await page.waitForFunction(() => document.querySelector('.entry.wrong') === null);
  });

  it('takes a paste from a spreadsheet after showing how it was understood, and one undo takes all of it back', async () => {
    const { page } = await openNew('Paste cube');
    await page.click('text="+ sweep"');
    await page.click('table.read input[data-row="0"][data-column="0"]');
    await page.evaluate(() => {
      const data = new DataTransfer();
      data.setData('text/plain', 'I (A)\tV (V)\n0\t5,1\n0,5\t5,0\n1,0\t4,l\n');
      document.activeElement?.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
    });
    const preview = page.locator('.paste');
    await preview.waitFor();
    expect(await preview.innerText()).toMatch(/3 rows from row 1[\s\S]*row 3 “4,l”/);
    await preview.getByText('Take 3 rows').click();
    await saved(page);
    expect(await page.locator('table.read input[data-row="1"][data-column="1"]').inputValue()).toBe('5,0');
    expect(await page.locator('table.read input[data-row="2"][data-column="1"]').inputValue()).toBe('4,l');
    await page.getByRole('button', { name: 'Undo paste of 3 rows' }).click();
    await page.waitForFunction(() => document.querySelectorAll('table.read tbody tr').length === 1);
  });
});

describe('files and pictures', () => {
  it('takes what an instrument wrote as a load sweep, after showing how it was understood', async () => {
    const { page, id, requests } = await openNew('File cube');
    await page.goto(`${workspace.link}case/${id}/files`);
    await page.getByLabel('Choose files').setInputFiles('examples/fell-12/load-sweep-230.csv');
    const coming = page.locator('.coming');
    await coming.getByText(/\d+ rows, \d+ columns/).waitFor();
    expect(await coming.getByLabel('sweep', { exact: true }).isChecked()).toBe(true);
    await coming.getByText('Take it into the case').click();
    await page.waitForURL('**/load');
    await page.getByText(/Read from the file “load-sweep-230”/).waitFor();
    await addLevel(page, id, '12 V');
    await page.goto(`${workspace.link}case/${id}/load`);
    await page.locator('table.read.taken tbody tr').nth(10).waitFor();
    expect(requests.filter((url) => !url.startsWith(workspace.link) && !url.startsWith('blob:'))).toEqual([]);
  });

  it('refuses a drawing that calls itself a picture, in one sentence, and keeps nothing of it', async () => {
    const { page, id } = await openNew('Picture cube');
    await page.goto(`${workspace.link}case/${id}/files`);
    const buffer = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>');
    await page.getByLabel('Choose files').setInputFiles({ name: 'photo.png', mimeType: 'image/png', buffer });
    expect(await page.locator('.coming .trouble').innerText()).toMatch(/a drawing or a page/);
    expect(await page.locator('.filelist li').count()).toBe(0);
  });

  it('takes a picture and shows it small beside its name', async () => {
    const { page, id } = await openNew('Photo cube');
    await page.goto(`${workspace.link}case/${id}/files`);
    const buffer = await sharp({ create: { width: 640, height: 480, channels: 3, background: '#446688' } })
      .jpeg()
      .toBuffer();
    await page.getByLabel('Choose files').setInputFiles({ name: 'label.jpg', mimeType: 'image/jpeg', buffer });
    await page.getByText('Take it into the case').click();
    await page.waitForFunction(() => (document.querySelector<HTMLImageElement>('.filelist img')?.naturalWidth ?? 0) === 320);
  });
});

describe('a thermal reading', () => {
  it('typed at a place of the case moves the finding of that place', async () => {
    const { page } = await workspace.page();
    await page.goto(`${workspace.link}case/tarn-30/heat`);
    const value = page.locator('.records input[data-place$="/value"], .records input[data-place$="/value/v"]').first();
    await value.fill('190 °C');
    await saved(page);
    await page.waitForFunction(() => document.querySelector('.half .word')?.textContent?.includes('Nothing found wrong') === false);
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() => document.querySelector('.half .word')?.textContent?.includes('Nothing found wrong'));
  });
});

describe('two tabs on one case', () => {
  it('see what the other entered, and different fields merge', async () => {
    const first = await openNew('Two tabs');
    const second = await workspace.page();
    await second.page.goto(`${workspace.link}case/${first.id}/sample`);
    await second.page.waitForSelector('#chapter-title');
    await first.page.goto(`${workspace.link}case/${first.id}/sample`);
    await first.page.getByLabel('sample', { exact: true }).fill('B');
    await second.page.getByLabel('examined by', { exact: true }).fill('J. Bench');
    await first.page.waitForFunction(() => [...document.querySelectorAll('input')].some(({ value }) => value === 'J. Bench'));
    await second.page.waitForFunction(() => [...document.querySelectorAll('input')].some(({ value }) => value === 'B'));
  });
});

describe('keyboard alone', () => {
  it('reaches the verdict, a finding, its origin, a chapter and the search, and gives the focus back', async () => {
    const { page } = await workspace.page();
    await page.goto(`${workspace.link}case/beck-5/load`);
    await page.waitForSelector('#chapter-title');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('To the verdict');
    await page.keyboard.press('v');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('verdict');
    await page.keyboard.press('Tab');
    await page.keyboard.press(']');
    await page.waitForSelector('.opened');
    await page.keyboard.press('g');
    await page.keyboard.press('b');
    await page.waitForURL('**/board');
    await page.keyboard.press('/');
    await page.keyboard.type('creepage');
    await page.keyboard.press('Enter');
    await page.waitForFunction(
      () => document.querySelector('.opened') !== null && document.activeElement?.matches('input, select') === true,
    );
  });
});

const AXE_MS = 240_000; // ten pages, each looked through whole
const PLACES = ['sample', 'label', 'touch', 'load', 'heat', 'board', 'transformer', 'circuit', 'faults', 'files', 'judgement'];

describe('every page of a case', () => {
  for (const dark of [false, true])
    it(
      `has no fault that axe finds, ${dark ? 'dark' : 'light'}`,
      async () => {
        const { page, complaints } = await workspace.page({ dark });
        for (const place of PLACES) {
          await page.goto(`${workspace.link}case/beck-5/${place}`);
          await page.waitForSelector('#chapter-title');
          const { violations } = await new AxeBuilder({ page })
            .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
            .analyze();
          expect(violations.map(({ id, nodes }) => `${place}: ${id}: ${nodes[0]?.html}`)).toEqual([]);
        }
        expect(complaints).toEqual([]);
      },
      AXE_MS,
    );

  it('fits a phone: nothing is wider than the page', async () => {
    const { page } = await workspace.page({ width: 390, height: 844 });
    for (const place of PLACES) {
      await page.goto(`${workspace.link}case/fell-12/${place}`);
      await page.waitForSelector('#chapter-title');
      const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      expect(`${place} ${over}`).toBe(`${place} 0`);
    }
  });
});
