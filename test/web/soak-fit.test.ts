import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkspace, type TestWorkspace } from './start-workspace.ts';

let workspace: TestWorkspace;
beforeAll(async () => {
  workspace = await startWorkspace(['fell-12']);
});
afterAll(() => workspace.stop());

const heading = (page: Page) => page.getByRole('region', { name: 'where it is heading' });

describe('a logged soak', () => {
  it('is followed to its end from the page, kept, and worked out again when its table says something else', async () => {
    const { page, complaints } = await workspace.page();
    await page.goto(`${workspace.link}case/fell-12/heat`);
    await heading(page).waitFor();
    expect(await heading(page).innerText()).toMatch(/winding is heading for 1\d\d/);
    await page.waitForTimeout(500); // the page listens to what others do once it is open
    // another place for a column: what was kept is about another table
    await page.evaluate(async () => {
      const open = (await (await fetch('/api/cases/fell-12')).json()) as { head: { revision: number } };
      await fetch('/api/cases/fell-12/edits', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({
          by: 'another',
          base: open.head.revision,
          step: 'swap',
          name: { key: 'entry', args: {} },
          changes: [{ at: '/case/exhibits/soak-1/table/columns/case/of', was: 'case-top', to: 'bulk' }],
        }),
      });
    });
    await heading(page).getByText('has changed since').waitFor();
    await heading(page).getByRole('button', { name: 'Work out where it is heading' }).click();
    await heading(page).getByText('bulk capacitor is heading for').waitFor();
    // one step of undo takes it back, and with it what was kept
    await page.getByRole('button', { name: /^Undo/ }).click();
    await heading(page).getByText('has changed since').waitFor();
    expect(complaints).toEqual([]);
  }, 60_000);

  it('that does not exist, or has no times, is refused in one sentence', async () => {
    const { page } = await workspace.page();
    await page.goto(workspace.link);
    const said = await page.evaluate(async () => {
      const response = await fetch('/api/cases/fell-12/foresee', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ by: 'test', base: 1, step: 'one', soak: 'nowhere', withinK: 1 }),
      });
      return (await response.text()).trim();
    });
    expect(JSON.parse(said)).toMatchObject({ problem: { code: 'no-such-soak', detail: expect.stringContaining('one of soak-1') } });
  });
});
