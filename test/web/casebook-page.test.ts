import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkspace, type TestWorkspace } from './start-workspace.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe('an empty casebook', () => {
  let workspace: TestWorkspace;
  beforeAll(async () => {
    workspace = await startWorkspace();
  });
  afterAll(() => workspace.stop());

  it('says how to begin, and a name is enough for a new case', async () => {
    const { page, complaints } = await workspace.page();
    await page.goto(workspace.link);
    await page.getByLabel('name of the unit').fill('Gull 9');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/case/gull-9/**');
    await page.waitForSelector('#chapter-title');
    await page.goBack();
    await page.getByText('Gull 9').first().waitFor();
    expect(complaints).toEqual([]);
  });
});

describe('the list of cases', () => {
  let workspace: TestWorkspace;
  beforeAll(async () => {
    workspace = await startWorkspace(['beck-5', 'fell-12', 'moss-trio', 'tarn-30']);
  });
  afterAll(() => workspace.stop());

  it('duplicates, packs, deletes with undo, and takes a packed case in again', async () => {
    const { page, complaints } = await workspace.page();
    await page.goto(workspace.link);
    const panel = page.locator('aside.side');
    await panel.getByRole('heading', { name: 'Beck 5', exact: true }).waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), panel.getByRole('link', { name: 'Export' }).click()]);
    const archive = await download.path();
    expect(readFileSync(archive).subarray(0, 2).toString()).toBe('PK');
    await panel.getByRole('button', { name: 'Duplicate' }).click();
    await page.keyboard.press('Enter');
    await page.waitForURL('**/case/beck-5-copy/**');
    await page.goto(workspace.link);
    await page.getByText('5 cases').first().waitFor();
    await page.getByText('Fell 12').first().click();
    await panel.getByRole('heading', { name: 'Fell 12', exact: true }).waitFor();
    await panel.getByRole('button', { name: 'Delete' }).click();
    await page.getByText('4 cases').first().waitFor();
    await page.getByRole('button', { name: 'Undo the deletion' }).click();
    await page.getByText('5 cases').first().waitFor();
    await page.getByLabel('Import a packed case').setInputFiles(archive);
    await page
      .getByText(/beck-5/)
      .first()
      .waitFor(); // refused: its id is taken, and the sentence says so
    expect(complaints.filter((text) => !/40\d|42\d/.test(text))).toEqual([]);
  });

  it('shows what a filter leaves, keeps it in the address, and gives it back', async () => {
    const { page } = await workspace.page();
    await page.goto(workspace.link);
    await page.getByRole('button', { name: /^Unsafe/ }).click();
    await page.waitForFunction(
      () => document.body.textContent?.includes('Fell 12') === true && document.body.textContent?.includes('Tarn 30') === false,
    );
    expect(page.url()).toContain('failure=Unsafe');
    await page.reload();
    await page.getByText('Fell 12').first().waitFor();
    expect(await page.getByText('Tarn 30').count()).toBe(0);
  });

  for (const dark of [false, true])
    it(`has no fault that axe finds, ${dark ? 'dark' : 'light'}, wide and narrow`, async () => {
      for (const width of [1440, 390]) {
        const { page, complaints } = await workspace.page({ dark, width });
        await page.goto(workspace.link);
        await page.getByText('Fell 12').first().waitFor();
        const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
        expect(violations.map(({ id, nodes }) => `${width}: ${id}: ${nodes[0]?.html}`)).toEqual([]);
        expect(complaints).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
      }
    });
});
