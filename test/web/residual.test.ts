import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkspace, type TestWorkspace } from './start-workspace.ts';

let workspace: TestWorkspace;
beforeAll(async () => {
  workspace = await startWorkspace(['moss-trio']);
});
afterAll(() => workspace.stop());

describe('the voltage left after unplugging', () => {
  it('is kept in the case by hand, joined by a second reading, and told with the cautions', async () => {
    const { page, complaints } = await workspace.page();
    await page.goto(`${workspace.link}case/moss-trio/board`);
    const caution = page.getByRole('region', { name: 'Caution' });
    await caution.getByLabel('now').fill('143');
    await caution.getByText('discharge again').waitFor();
    await caution.getByLabel('after unplugging').fill('20');
    await caution.getByRole('button', { name: 'keep in the case' }).click();
    const told = caution.getByRole('button', { name: /^143/ });
    await told.waitFor();
    expect((await told.innerText()).replaceAll('\u00a0', ' ')).toContain('20 s after unplugging');
    expect(await caution.getByRole('button', { name: 'keep the second reading too' }).count()).toBe(0); // nothing is read yet
    await caution.getByLabel('in 1 min').fill('3,2');
    await caution.getByRole('button', { name: 'keep the second reading too' }).click();
    await caution.getByText('kept in the case').waitFor();
    await caution.getByRole('button', { name: /; 3\.2/ }).waitFor();
    const kept = await page.evaluate(async () => {
      const { state } = (await (await fetch('/api/cases/moss-trio')).json()) as { state: { case: { exhibits: { kind: string }[] } } };
      return state.case.exhibits.filter(({ kind }) => kind === 'residual');
    });
    expect(kept).toMatchObject([{ kind: 'residual', value: '143 V', after: '20 s', later: { value: '3,2 V' } }]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('leads to where its number comes from', async () => {
    const { page } = await workspace.page();
    await page.goto(`${workspace.link}case/moss-trio/board`);
    await page.getByRole('region', { name: 'Caution' }).getByRole('button', { name: /^143/ }).click();
    await page.locator('.origin').getByText('143').first().waitFor();
    await page.context().close();
  });

  it('is empty again at the next power-up, and what was kept stays kept', async () => {
    const { page } = await workspace.page();
    await page.goto(`${workspace.link}case/moss-trio/board`);
    const caution = page.getByRole('region', { name: 'Caution' });
    await caution.getByLabel('now').fill('2');
    await caution.getByRole('button', { name: 'powered up again' }).click();
    expect(await caution.getByLabel('now').inputValue()).toBe('');
    expect(await caution.getByRole('button', { name: /^143/ }).count()).toBe(1);
    await page.context().close();
  });
});
