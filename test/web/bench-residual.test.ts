import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkspace, type TestWorkspace } from './start-workspace.ts';

interface Residual {
  readonly kind: string;
  readonly value: unknown;
  readonly later?: { readonly value: unknown };
}

describe('the residual at the bench', () => {
  let workspace: TestWorkspace;
  beforeAll(async () => {
    workspace = await startWorkspace(['tarn-30']);
  });
  afterAll(() => workspace.stop());

  it('opens what was shut once it is low, stands in the case, and shuts it again when it is taken back', async () => {
    const { page, complaints } = await workspace.page({ width: 1440, height: 900 });
    const residuals = (): Promise<readonly Residual[]> =>
      page.evaluate(async () => {
        const { state } = (await (await fetch('/api/cases/tarn-30')).json()) as { state: { case: { exhibits: Residual[] } } };
        return state.case.exhibits.filter(({ kind }) => kind === 'residual');
      });
    await page.goto(`${workspace.link}bench/tarn-30`);
    const day = page.getByRole('button', { name: /^Step \d+ of \d+$/ });
    const goTo = async (step: RegExp): Promise<void> => {
      if ((await day.count()) > 0) await day.click();
      await page.getByRole('button', { name: step }).first().click();
    };
    const shut = page.getByText('Shut until the residual above', { exact: false });
    await goTo(/^Board/);
    await shut.waitFor();
    const before = (await residuals()).length;

    await goTo(/^Open and discharge/);
    await page.getByRole('button', { name: 'C1', exact: true }).click();
    await page.keyboard.type('3.2');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await residuals()).length).toBe(before + 1);
    expect((await residuals()).at(-1)).toMatchObject({ value: '3.2 V', across: 'c1' });
    await page.getByRole('button', { name: /^residual, a minute later/ }).click();
    await page.keyboard.type('6.4');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await residuals()).at(-1)?.later?.value).toBe('6.4 V');
    await goTo(/^Board/);
    expect(await shut.count()).toBe(0);

    await goTo(/^Open and discharge/);
    await page.getByRole('button', { name: /^residual \d/ }).click();
    if ((await page.getByRole('button', { name: 'C1', exact: true }).count()) > 0)
      await page.getByRole('button', { name: 'C1', exact: true }).click();
    await page.keyboard.type('2.9');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await residuals()).length).toBe(before + 2);
    await page.waitForTimeout(800); // the bounce of the key that kept it does not take it back
    await page.getByRole('button', { name: /^Undo 2\.9 V/ }).click();
    await expect.poll(async () => (await residuals()).length).toBe(before + 1);
    await goTo(/^Board/);
    await shut.waitFor();
    expect(complaints).toEqual([]);
  });
});
