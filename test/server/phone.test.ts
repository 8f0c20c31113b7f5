import { expect, test } from 'vitest';
import { makeCase, OWN, startWorkspace, toldBy } from './start-workspace.ts';

const TOKEN = 'a-token-of-this-test-that-nobody-guesses';
const NEAR = '192.0.2.20:4810'; // RFC 5737: an address for documents
const cookie = `mainsworthy-access=${TOKEN}`;

test('a server that only this machine reaches has no way for a phone, and says how to get one', async () => {
  const server = await startWorkspace();
  const id = await makeCase(server, 'Quay cube');
  expect(await (await server.ask('/api/access')).json()).toEqual({ phones: false });
  const told = await toldBy(await server.ask(`/api/cases/${id}/phone`));
  expect([told.status, told.detail.includes('--host')]).toEqual([404, true]);
  await server.drop();
});

test('a server that others reach draws the link of a case, tells no script the token, and shows neither without it', async () => {
  const server = await startWorkspace({ token: TOKEN, hosts: [OWN, NEAR] });
  const ask = (path: string): Promise<Response> => server.ask(path, { headers: { cookie } });
  const told = await (await ask('/api/access')).text();
  expect(JSON.parse(told)).toEqual({ phones: true });
  expect(told).not.toContain(TOKEN);
  const drawn = await ask('/api/cases/quay-cube/phone');
  expect(drawn.headers.get('content-type')).toBe('image/svg+xml');
  const other = await ask('/api/cases/another-cube/phone');
  const text = await drawn.text();
  expect(text).toMatch(/^<svg /);
  expect(text).not.toBe(await other.text());
  expect(drawn.headers.get('cache-control')).toBe('no-store');
  for (const path of ['/api/access', '/api/cases/quay-cube/phone']) expect((await server.ask(path)).status).toBe(401);
  await server.drop();
});
