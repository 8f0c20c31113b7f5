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
