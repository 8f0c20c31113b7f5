import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { type Running, runServer } from '../../src/server/run-server.ts';
import { mustOpen, scratchFolder } from '../store/scratch-casebook.ts';
import { toldBy } from './start-workspace.ts';

const PAGES = 110; // of 4 KiB: beyond them the disk counts as full
const MOST_EDITS = 1000;
const LONG = 1900; // characters of one entry, so that the disk is soon full
let scratch: ReturnType<typeof scratchFolder>;
let running: Running | null = null;
beforeEach(() => {
  scratch = scratchFolder();
});
afterEach(async () => {
  await running?.stop();
  running = null;
  scratch.drop();
});

async function start(mostPages?: number): Promise<string> {
  const store = await mustOpen(scratch.path, { access: 'write', make: true, ...(mostPages === undefined ? {} : { mostPages }) });
  const one = await runServer({ store, pages: join(scratch.folder, 'none'), port: 0, host: '127.0.0.1' });
  if (isRefusal(one)) throw new Error(one.code);
  running = one;
  return one.links[0] ?? '';
}
const send = (base: string, path: string, body: object): Promise<Response> =>
  fetch(new URL(path, base), { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) });
const sampleOf = async (base: string, id: string): Promise<{ sample: string; revision: number }> => {
  const opened = (await (await fetch(new URL(`/api/cases/${id}`, base))).json()) as {
    head: { revision: number };
    state: { case: { sample: string } };
  };
  return { sample: opened.state.case.sample, revision: opened.head.revision };
};
const note = (base: number, was: string, to: string) => ({
  by: 'tab-1',
  base,
  step: `s${base}`,
  name: { key: 'entry', args: {} },
  changes: [{ at: '/case/sample', was, to }],
});

describe('a disk that is full', () => {
  test('is one clear sentence; what was acknowledged is there, what was refused is not, and it is taken once there is room', async () => {
    const base = await start(PAGES);
    const { id } = (await (await send(base, '/api/cases', { name: 'Quay cube', by: 'tab-1' })).json()) as { id: string };
    let sample = 'A';
    let revision = 1;
    let refused: Response | null = null;
    while (refused === null && revision < MOST_EDITS) {
      const next = `${revision}`.padEnd(LONG, '.');
      const answered = await send(base, `/api/cases/${id}/edits`, note(revision, sample, next));
      if (answered.ok) {
        sample = next;
        revision = ((await answered.json()) as { revision: number }).revision;
      } else refused = answered;
    }
    expect(revision).toBeGreaterThan(5);
    if (refused === null) throw new Error(`${revision} entries, and the disk is not full`);
    const told = await toldBy(refused);
    expect(told).toMatchObject({ status: 507, code: 'disk-full' }); // RFC 4918, 11.5: insufficient storage
    expect(told.detail).toMatch(/^The disk is full: .*\.$/);
    expect(told.detail).not.toContain(scratch.folder);
    expect(told.detail.match(/[.?!](\s|$)/g)).toHaveLength(1);

    // everything can still be read, the list too
    expect(await sampleOf(base, id)).toEqual({ sample, revision });
    const list = (await (await fetch(new URL('/api/casebook', base))).json()) as { rows: { head: { id: string } }[] };
    expect(list.rows.map(({ head }) => head.id)).toEqual([id]);

    await running?.stop();
    running = null;
    const roomy = await start();
    expect(await sampleOf(roomy, id)).toEqual({ sample, revision });
    const again = await send(roomy, `/api/cases/${id}/edits`, note(revision, sample, 'B'));
    expect(again.status).toBe(200);
    expect(await sampleOf(roomy, id)).toEqual({ sample: 'B', revision: revision + 1 });
  });

  test('refuses an upload, and keeps nothing of it', async () => {
    const base = await start(PAGES);
    const { id } = (await (await send(base, '/api/cases', { name: 'Quay cube', by: 'tab-1' })).json()) as { id: string };
    const answered = await fetch(new URL(`/api/cases/${id}/files?name=long.csv`, base), {
      method: 'POST',
      body: 'I,V\n0.5,5.05\n'.repeat(100_000),
    });
    expect(await toldBy(answered)).toMatchObject({ status: 507, code: 'disk-full' });
    expect((await send(base, `/api/cases/${id}/edits`, note(1, 'A', 'B'))).status).toBe(200);
    await running?.stop();
    running = null;
    const store = await mustOpen(scratch.path);
    expect(await store.check()).toMatchObject({ files: 0, wrong: [] });
    await store.close();
  });
});
