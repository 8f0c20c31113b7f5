import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { makeCase, startWorkspace, toldBy } from './start-workspace.ts';

interface Published {
  number: number;
  revision: number;
  sha256: string;
}

test('a published Assessment keeps its number and its bytes whatever happens to the case, and the same one again is no new version', async () => {
  const server = await startWorkspace();
  const id = await makeCase(server, 'Quay cube');
  const path = `/api/cases/${id}/published`;
  const publish = async (): Promise<Published> => (await (await server.ask(path, { method: 'POST' })).json()) as Published;
  const read = async (number: number): Promise<Buffer> => Buffer.from(await (await server.ask(`${path}/${number}`)).arrayBuffer());
  const first = await publish();
  expect(first).toMatchObject({ number: 1, revision: 1 });
  expect(await publish()).toEqual(first);
  const bytes = await read(1);
  expect(createHash('sha256').update(bytes).digest('hex')).toBe(first.sha256);
  const { state } = (await (await server.ask(`/api/cases/${id}`)).json()) as { state: { case: { sample: string } } };
  await server.send('POST', `/api/cases/${id}/edits`, {
    by: 'tab-1',
    base: 1,
    step: 's1',
    name: { key: 'entry', args: {} },
    changes: [{ at: '/case/sample', was: state.case.sample, to: 'B' }],
  });
  expect(await publish()).toMatchObject({ number: 2, revision: 2 });
  expect((await read(1)).equals(bytes)).toBe(true);
  expect((await read(2)).equals(bytes)).toBe(false);
  expect(((await (await server.ask(path)).json()) as Published[]).map(({ number }) => number)).toEqual([1, 2]);
  expect(await toldBy(await server.ask(`${path}/3`))).toMatchObject({ status: 404, code: 'no-such-version' });
  expect((await toldBy(await server.ask('/api/cases/none/published', { method: 'POST' }))).status).toBe(404);
  await server.drop();
});

test('what would be published says of what and by which rules; a published version is drawn from its own bytes and told apart from now', async () => {
  const server = await startWorkspace();
  const id = await makeCase(server, 'Quay cube');
  const path = `/api/cases/${id}/published`;
  const json = async (at: string): Promise<Record<string, unknown>> => (await (await server.ask(at)).json()) as Record<string, unknown>;
  const before = await json(`/api/cases/${id}/publishing`);
  expect(before).toMatchObject({ now: { name: 'Quay cube', invented: false, failure: 'No verdict yet', revision: 1 }, published: [] });
  await server.ask(path, { method: 'POST' });
  const report = await server.ask(`${path}/1/report`);
  expect(report.headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
  const page = await report.text();
  expect(page).toContain('Quay cube');
  expect(await json(`${path}/1/moved`)).toEqual({ verdict: null, coverage: null, rules: false, tool: false, rows: [] });
  const seam = { id: 'body-1', kind: 'body', plug: { state: 'notLooked' }, seamOpens: true, livePartTouchable: true };
  await server.send('POST', `/api/cases/${id}/edits`, {
    by: 'tab-1',
    base: 1,
    step: 's1',
    name: { key: 'entry', args: {} },
    changes: [{ at: '/case/exhibits/body-1', to: seam }],
  });
  const moved = await json(`${path}/1/moved`);
  expect(moved['verdict']).toEqual({ was: 'No verdict yet', now: 'Dangerous' });
  const rows = moved['rows'] as { id: string; was: { words: string }; now: { words: string } }[];
  expect(rows.find((row) => row.id === 'shock/enclosure@live-part')).toMatchObject({ was: { words: 'not assessed' } });
  expect(rows.find((row) => row.id === 'shock/enclosure@live-part')?.now.words).toContain('fail');
  expect(await (await server.ask(`${path}/1/report`)).text()).toBe(page);
  const after = await json(`/api/cases/${id}/publishing`);
  expect(after).toMatchObject({
    now: { failure: 'Dangerous', revision: 2 },
    published: [{ number: 1, view: { failure: 'No verdict yet' } }],
  });
  expect(await toldBy(await server.ask(`${path}/2/report`))).toMatchObject({ status: 404, code: 'no-such-version' });
  await server.drop();
});
