import { request } from 'node:http';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { type Running, runServer } from '../../src/server/run-server.ts';
import { mustOpen, scratchFolder } from '../store/scratch-casebook.ts';

const MOST_MS = 2000; // in which a server has to end
let scratch: ReturnType<typeof scratchFolder>;
const running: Running[] = [];
beforeEach(() => {
  scratch = scratchFolder();
});
afterEach(async () => {
  for (const one of running.splice(0)) await one.stop();
  scratch.drop();
});

async function start(host = '127.0.0.1', port = 0): Promise<Running> {
  const store = await mustOpen(scratch.path);
  const one = await runServer({ store, pages: join(scratch.folder, 'none'), port, host });
  if (isRefusal(one)) {
    await store.close();
    throw new Error(one.code);
  }
  running.push(one);
  return one;
}
const addressOf = ({ links: [link] }: Running): URL => new URL(link ?? '');
const json = (body: object): RequestInit => ({
  method: 'POST',
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify(body),
});
async function newCase(base: URL): Promise<string> {
  return ((await (await fetch(new URL('/api/cases', base), json({ name: 'Quay cube', by: 'tab-1' }))).json()) as { id: string }).id;
}

test('another tab hears of an edit as it is written, and the stream ends with the server, within two seconds', async () => {
  const one = await start();
  const base = addressOf(one);
  const id = await newCase(base);
  const stream = await fetch(new URL(`/api/cases/${id}/events`, base));
  expect(stream.headers.get('content-type')).toContain('text/event-stream');
  const reader = (stream.body as ReadableStream<Uint8Array>).getReader();
  const change = { at: '/case/sample', was: 'A', to: 'B' };
  await fetch(
    new URL(`/api/cases/${id}/edits`, base),
    json({ by: 'tab-1', base: 1, step: 's1', name: { key: 'entry', args: {} }, changes: [change] }),
  );
  let heard = '';
  while (!heard.includes('\n\n')) heard += new TextDecoder().decode((await reader.read()).value);
  expect(heard).toMatch(/^event: revision$/m);
  expect(heard).toMatch(/^id: 2$/m);
  expect(JSON.parse(/^data: (.*)$/m.exec(heard)?.[1] ?? '')).toMatchObject({ by: 'tab-1', revision: 2 });
  const before = performance.now();
  await one.stop();
  running.length = 0;
  expect(performance.now() - before).toBeLessThan(MOST_MS);
  expect((await reader.read()).done).toBe(true);
});

test('a server stopped in the middle of an upload ends in two seconds, and the casebook opens with all that was acknowledged', async () => {
  const one = await start();
  const base = addressOf(one);
  const id = await newCase(base);
  const upload = request(new URL(`/api/cases/${id}/files?name=half.csv`, base), { method: 'POST' });
  const ended = new Promise<void>((resolve) => {
    upload.on('error', () => resolve());
    upload.on('response', (answer) => answer.resume().on('end', resolve));
  });
  upload.write('I,V\n'.repeat(100_000));
  await new Promise((resolve) => setTimeout(resolve, 100));
  const before = performance.now();
  await one.stop();
  running.length = 0;
  expect(performance.now() - before).toBeLessThan(MOST_MS);
  upload.destroy();
  await ended;
  const store = await mustOpen(scratch.path);
  expect((await store.cases.head(id))?.revision).toBe(1);
  expect((await store.check()).wrong).toEqual([]);
  expect((await store.check()).files).toBe(0);
  await store.close();
});

test('a port that somebody else listens on is refused in one sentence', async () => {
  const one = await start();
  const other = scratchFolder();
  const store = await mustOpen(other.path);
  const second = await runServer({ store, pages: other.folder, port: Number(addressOf(one).port), host: '127.0.0.1' });
  expect(isRefusal(second) && second.code).toBe('port-taken');
  await store.close();
  other.drop();
});

test('beyond loopback the link carries 32 random bytes, new at each start, and nothing is shown without them', async () => {
  const one = await start('0.0.0.0');
  const tokens = one.links.map((link) => new URL(link).searchParams.get('token') ?? '');
  const port = one.links[0] === undefined ? '' : addressOf(one).port;
  expect(tokens.length, 'this machine has an address in a network').toBeGreaterThan(0);
  expect(Buffer.from(tokens[0] ?? '', 'base64url')).toHaveLength(32);
  const base = new URL(`http://127.0.0.1:${port}`);
  expect((await fetch(new URL('/api/casebook', base))).status).toBe(401);
  const opened = await fetch(new URL(`/?token=${tokens[0]}`, base), { redirect: 'manual' });
  expect(opened.status).toBe(303);
  const cookie = (opened.headers.get('set-cookie') ?? '').split(';')[0] ?? '';
  expect((await fetch(new URL('/api/casebook', base), { headers: { cookie } })).status).toBe(200);
  await one.stop();
  running.length = 0;
  const again = await start('0.0.0.0');
  expect(addressOf(again).searchParams.get('token')).not.toBe(tokens[0]);
});

test('on loopback nothing listens on the addresses of the network', async () => {
  const { hostname, search } = addressOf(await start());
  expect([hostname, search]).toEqual(['127.0.0.1', '']);
});
