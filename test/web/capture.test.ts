import { randomBytes } from 'node:crypto';
import { AxeBuilder } from '@axe-core/playwright';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startWorkspace, type TestWorkspace } from './start-workspace.ts';

const ANY = '0.0.0.0';
const MOST_MS = 3000; // from the picture in the hand to its place in the case
const PHONE = { width: 390, height: 844 };
let workspace: TestWorkspace;
beforeAll(async () => {
  workspace = await startWorkspace(['fell-12'], ANY);
});
afterAll(() => workspace.stop());

/** The page of a phone that has followed the link. */
async function inTheHand(dark = false) {
  const opened = await workspace.page({ ...PHONE, dark });
  const link = new URL(workspace.link);
  link.pathname = '/capture/fell-12';
  await opened.page.goto(link.href);
  await opened.page.waitForSelector('.capture');
  return opened;
}

it('opens through the link of a network, where the browser grants less than on loopback, and keeps the token out of the address', async () => {
  const { page, complaints, requests } = await inTheHand();
  expect(new URL(page.url()).hostname, 'not loopback').not.toMatch(/^127\.|localhost/);
  expect(await page.evaluate('isSecureContext')).toBe(false);
  expect(page.url()).not.toContain('token');
  expect(requests.filter((url) => new URL(url).host !== new URL(workspace.link).host)).toEqual([]);
  expect(complaints).toEqual([]);
});

it('takes a photo into the case within three seconds, and a tap takes it back', async () => {
  const { page, complaints } = await inTheHand();
  const [width, height] = [2000, 1500];
  const noise = await sharp(randomBytes(width * height * 3), { raw: { width, height, channels: 3 } })
    .jpeg()
    .toBuffer();
  await page.getByLabel('What the photo shows').fill('board, copper side');
  const before = performance.now();
  await page.setInputFiles('input[type=file]', { name: 'IMG 7.jpg', mimeType: 'image/jpeg', buffer: noise });
  await page.getByText('kept, on the disk').waitFor();
  expect(performance.now() - before).toBeLessThan(MOST_MS);
  const there = async (): Promise<number> =>
    page.evaluate(async () => {
      const { state } = (await (await fetch('/api/cases/fell-12')).json()) as { state: { case: { exhibits: { of?: string }[] } } };
      return state.case.exhibits.filter(({ of }) => of === 'board, copper side').length;
    });
  expect(await there()).toBe(1);
  await page.getByRole('button', { name: 'Undo photo of board, copper side' }).click();
  await page.getByText('on its way').waitFor({ state: 'detached' });
  await expect.poll(there).toBe(0);
  expect(complaints).toEqual([]);
});

it('keeps a temperature with one tap, says what cannot be read before it is kept, and shows the last three', async () => {
  const { page } = await inTheHand();
  const value = page.getByLabel('Value with its unit');
  const keep = page.getByRole('button', { name: 'Keep', exact: true });
  await value.fill('82 V');
  expect(await keep.isDisabled()).toBe(true);
  expect(await page.locator('#capture-said').innerText()).toContain('temperature');
  for (const reading of ['81.1 °C', '82.2 °C', '83.3 °C', '84.4 °C']) {
    await value.fill(reading);
    await keep.click();
  }
  const shown = await page.locator('.capture ol li span').allInnerTexts();
  expect(shown.map((text) => text.split(': ').at(-1))).toEqual(['84.4 °C', '83.3 °C', '82.2 °C']);
  await page.getByText('kept, on the disk').waitFor();
  await page.reload();
  const kept = await page.evaluate(async () => JSON.stringify(await (await fetch('/api/cases/fell-12')).json()));
  expect(kept).toContain('81.1 °C');
});

it.each([false, true])('has no fault that axe can find, and fits a phone (dark: %s)', async (dark) => {
  const { page } = await inTheHand(dark);
  const { violations } = await new AxeBuilder({ page: page as never }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(PHONE.width);
});

it('the page of the case draws the way of a phone', async () => {
  const { page } = await workspace.page();
  await page.goto(workspace.link);
  await page.goto(`${new URL(workspace.link).origin}/case/fell-12/load`);
  await page.getByRole('button', { name: 'Phone' }).click();
  await page.waitForFunction(() => (document.querySelector('.phone-code img') as HTMLImageElement | null)?.naturalWidth ?? 0);
});

it('a long upload says how much has gone, and Stop leaves nothing of it', async () => {
  const { page } = await workspace.page();
  await page.goto(workspace.link);
  await page.goto(`${new URL(workspace.link).origin}/case/fell-12/files`);
  const network = await page.context().newCDPSession(page);
  await network.send('Network.enable');
  const SLOW = 400_000; // bytes in a second
  await network.send('Network.emulateNetworkConditions', { offline: false, latency: 0, downloadThroughput: -1, uploadThroughput: SLOW });
  const rows = 'I (A),V (V)\n'.concat('0.500,5.05\n'.repeat(400_000));
  await page.setInputFiles('input[type=file]', { name: 'long.csv', mimeType: 'text/csv', buffer: Buffer.from(rows) });
  await page.getByText(/(?:0\.[1-9]|[1-4]\.\d) of 4\.2 MB sent/).waitFor();
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.getByText('Stopped; nothing of this file was kept.').waitFor();
  await page.getByRole('button', { name: 'Leave it' }).click();
  expect(await page.locator('.coming').count()).toBe(0);
});
