import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkspace, type TestWorkspace } from './start-workspace.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Rows of the last sweep of a case, as the server has them. */
const lastRows = (page: Page, id: string): Promise<unknown> =>
  page.evaluate(async (of) => {
    const { state } = (await (await fetch(`/api/cases/${of}`)).json()) as {
      state: { case: { exhibits: { kind: string; table?: { rows?: unknown[] } }[] } };
    };
    return state.case.exhibits.filter(({ kind }) => kind === 'sweep').at(-1)?.table?.rows;
  }, id);

async function beginSweep(page: Page): Promise<void> {
  await page.getByText('Sweeps at several mains').click();
  for (const choice of ['230 V', '50 Hz', 'direct, earthed neutral', 'end of the cable', 'rising', 'closed', '20 s'])
    await page.getByText(choice, { exact: true }).click();
  await page.getByRole('button', { name: /^Begin/ }).click();
}

describe('a case at the bench', () => {
  let workspace: TestWorkspace;
  beforeAll(async () => {
    workspace = await startWorkspace(['fell-12', 'moss-trio']);
  });
  afterAll(() => workspace.stop());

  it('keeps a reading with one key, takes it back with another, and Load off is always in its corner', async () => {
    const { page, complaints } = await workspace.page({ width: 1440, height: 900 });
    await page.goto(`${workspace.link}bench/fell-12`);
    await beginSweep(page);
    const corner = await page.getByText('Load off').boundingBox();
    await page.keyboard.type('12.19');
    await page.keyboard.press('Enter');
    await expect.poll(() => lastRows(page, 'fell-12')).toHaveLength(1);
    expect(await lastRows(page, 'fell-12')).toMatchObject([{ cells: expect.arrayContaining(['12.19']) }]);
    expect(await page.getByText('Load off').boundingBox()).toEqual(corner);
    await page.getByRole('button', { name: /undo/i }).first().click();
    await expect.poll(async () => ((await lastRows(page, 'fell-12')) as unknown[] | undefined)?.length ?? 0).toBe(0);
    expect(complaints).toEqual([]);
  });

  it('names a thing where it is asked for, and says why there is no number, without leaving the reading', async () => {
    const { page, complaints } = await workspace.page({ width: 1440, height: 900 });
    const state = (): Promise<{ ports: { id: string; name: string }[]; exhibits: { kind: string; port?: string; value?: unknown }[] }> =>
      page.evaluate(async () => ((await (await fetch('/api/cases/moss-trio')).json()) as { state: { case: never } }).state.case);
    const faults = async (): Promise<string[]> =>
      (await new AxeBuilder({ page }).withTags(TAGS).analyze()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
    await page.goto(`${workspace.link}bench/moss-trio`);
    await page.getByText('Starts, brown-out, transients').click();
    await page.getByRole('button', { name: 'ripple, peak to peak' }).click();
    await page.getByRole('button', { name: '+ another output' }).click();
    await page.keyboard.type('hidden pad');
    expect(await faults()).toEqual([]);
    await page.getByRole('button', { name: 'bare', exact: true }).click();
    for (const choice of ['20 MHz', '0.1 µF and 10 µF at the probe', 'nothing connected', '230 V'])
      await page.getByRole('button', { name: choice, exact: true }).click();
    await page.keyboard.type('?');
    await page.getByRole('heading', { name: 'No ripple, peak to peak: why?' }).waitFor();
    await page.keyboard.type('the probe rang');
    expect(await faults()).toEqual([]);
    await page.keyboard.press('Enter');
    await expect
      .poll(async () => (await state()).exhibits.filter(({ kind }) => kind === 'ripple').at(-1))
      .toMatchObject({ port: 'hidden-pad', value: { state: 'unknown', because: 'the probe rang' } });
    expect((await state()).ports.at(-1)).toMatchObject({ id: 'hidden-pad', name: 'hidden pad', kind: 'bare' });
    await page.keyboard.type('84');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await state()).exhibits.filter(({ kind }) => kind === 'ripple').at(-1)?.value).toBe('84 mV');
    expect(complaints).toEqual([]);
  });

  for (const { width, height, dark } of [
    { width: 1440, height: 900, dark: false },
    { width: 390, height: 844, dark: true },
  ])
    it(`has no fault that axe finds, ${width} px ${dark ? 'dark' : 'light'}`, async () => {
      const { page } = await workspace.page({ width, height, dark });
      await page.goto(`${workspace.link}bench/moss-trio`);
      await page.getByText('Load off').waitFor();
      const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    });
});
