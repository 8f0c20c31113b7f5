import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeCase, type Started, startWorkspace, toldBy } from './start-workspace.ts';

let server: Started;
beforeEach(async () => {
  server = await startWorkspace();
});
afterEach(() => server.drop());

const sample = (was: string | undefined, to: string) => ({ at: '/case/sample', ...(was === undefined ? {} : { was }), to });
const editOf = (by: string, base: number, change: object, step = `${by}-${base}`) => ({
  by,
  base,
  step,
  name: { key: 'entry', args: {} },
  changes: [change],
});
interface AtDesk {
  head: { revision: number };
  state: { case: { sample: string } };
  screen: Record<string, string>;
}
const at = async (id: string): Promise<AtDesk> => (await (await server.ask(`/api/cases/${id}`)).json()) as AtDesk;

describe('a case over the wire', () => {
  test('is made, changed, taken back, brought back, and each is there when it is opened again', async () => {
    const id = await makeCase(server, 'Quay cube');
    const before = await at(id);
    const old = before.state.case.sample;
    const edited = await server.send('POST', `/api/cases/${id}/edits`, editOf('tab-1', before.head.revision, sample(old, 'B')));
    expect(edited.status).toBe(200);
    expect((await at(id)).state.case.sample).toBe('B');
    expect((await server.send('POST', `/api/cases/${id}/undo`, { by: 'tab-1' })).status).toBe(200);
    expect((await at(id)).state.case.sample).toBe(old);
    expect((await server.send('POST', `/api/cases/${id}/redo`, { by: 'tab-1' })).status).toBe(200);
    expect((await at(id)).state.case.sample).toBe('B');
  });

  test('two tabs on one field: the later writer is told both values, and the earlier entry stands', async () => {
    const id = await makeCase(server, 'Quay cube');
    const { head, state } = await at(id);
    const first = editOf('tab-1', head.revision, sample(state.case.sample, 'B'));
    const second = editOf('tab-2', head.revision, sample(state.case.sample, 'C'));
    await server.send('POST', `/api/cases/${id}/edits`, first);
    const answer = (await (await server.send('POST', `/api/cases/${id}/edits`, second)).json()) as { conflicts: object[] };
    expect(answer.conflicts).toHaveLength(1);
    expect(JSON.stringify(answer.conflicts)).toMatch(/"B"/);
    expect(JSON.stringify(answer.conflicts)).toMatch(/"C"/);
    expect((await at(id)).state.case.sample).toBe('B');
  });

  test('archived, removed and restored, it leaves the list and comes back whole', async () => {
    const id = await makeCase(server, 'Quay cube');
    const total = async (query = ''): Promise<number> =>
      ((await (await server.ask(`/api/casebook?${query}`)).json()) as { total: number }).total;
    expect(await total()).toBe(1);
    await server.send('PUT', `/api/cases/${id}/archived`, { archived: true });
    expect([await total(), await total('archived=true')]).toEqual([0, 1]);
    await server.send('PUT', `/api/cases/${id}/archived`, { archived: false });
    expect((await server.ask(`/api/cases/${id}`, { method: 'DELETE' })).status).toBe(204);
    expect(await total()).toBe(0);
    expect((await toldBy(await server.ask(`/api/cases/${id}`))).status).toBe(404);
    expect((await server.ask(`/api/cases/${id}/restore`, { method: 'POST' })).status).toBe(200);
    expect([await total(), (await at(id)).head.revision]).toEqual([1, 1]);
  });

  test('a position on the screen is kept beside the case and makes no revision', async () => {
    const id = await makeCase(server, 'Quay cube');
    expect((await server.send('PUT', `/api/cases/${id}/screen/panel`, { value: 'open' })).status).toBe(204);
    const { head, screen } = await at(id);
    expect([head.revision, screen['panel']]).toEqual([1, 'open']);
  });

  test('packed, it goes into another casebook with its history; a second time it is refused', async () => {
    const id = await makeCase(server, 'Quay cube');
    const { head, state } = await at(id);
    await server.send('POST', `/api/cases/${id}/edits`, editOf('tab-1', head.revision, sample(state.case.sample, 'B')));
    const archive = new Uint8Array(await (await server.ask(`/api/cases/${id}/pack`)).arrayBuffer());
    const other = await startWorkspace();
    try {
      const taken = await other.ask('/api/unpack', { method: 'POST', body: archive });
      expect(taken.status, await taken.clone().text()).toBe(200);
      const there = (await (await other.ask(`/api/cases/${id}`)).json()) as AtDesk;
      expect([there.head.revision, there.state.case.sample]).toEqual([2, 'B']);
      const again = await toldBy(await other.ask('/api/unpack', { method: 'POST', body: archive }));
      expect([again.status, again.code]).toEqual([409, 'case-exists']);
      const cut = await other.ask('/api/unpack', { method: 'POST', body: archive.subarray(0, archive.length - 40) });
      expect((await toldBy(cut)).detail.length).toBeGreaterThan(20);
    } finally {
      await other.drop();
    }
  });
});

describe('what is not understood', () => {
  test.each([
    ['GET', '/api/cases/none', undefined, 404, 'no-such-case'],
    ['GET', '/api/cases/none/report', undefined, 404, 'no-such-case'],
    ['GET', '/api/cases/none/pack', undefined, 404, 'case-missing'],
    ['DELETE', '/api/cases/none', undefined, 404, 'no-such-case'],
    ['POST', '/api/cases/none/restore', undefined, 404, 'no-such-case'],
    ['PUT', '/api/cases/none/archived', { archived: true }, 404, 'no-such-case'],
    ['POST', '/api/cases/none/undo', { by: 'x' }, 404, 'no-such-case'],
    ['POST', '/api/cases', { by: 'x' }, 422, 'not-understood'],
    ['POST', '/api/cases', { name: 'x'.repeat(500), by: 'x' }, 422, 'not-understood'],
    ['GET', '/api/casebook?count=100000', undefined, 422, 'not-understood'],
    ['GET', '/api/cases/none/files/abc', undefined, 422, 'not-understood'],
    ['PUT', '/api/cases/none/screen/..', { value: '1' }, 404, 'no-such-page'],
    ['GET', '/api/elsewhere', undefined, 404, 'no-such-page'],
  ] as const)('%s %s is a problem with one sentence', async (method, path, body, status, code) => {
    const told = await toldBy(body === undefined ? await server.ask(path, { method }) : await server.send(method, path, body));
    expect([told.status, told.code]).toEqual([status, code]);
    expect(told.detail).toMatch(/^\S.{10,}\S$/);
  });

  test('a body that is no JSON is said to be none', async () => {
    const answer = await server.ask('/api/cases', { method: 'POST', headers: { 'content-type': 'application/json' }, body: '{"name":' });
    expect(await toldBy(answer)).toMatchObject({ status: 400, code: 'not-json' });
  });

  test('a body beyond 2 MB is refused with the number', async () => {
    const told = await toldBy(await server.send('POST', '/api/cases', { name: 'x', by: 'x', more: 'y'.repeat(2_200_000) }));
    expect(told.status).toBe(413);
    expect(told.detail).toMatch(/\d{7}/);
  });
});

describe('the description of the interface', () => {
  interface Api {
    openapi: string;
    paths: Record<
      string,
      Record<string, { responses: Record<string, unknown>; parameters?: { name: string; in: string; required?: boolean }[] }>
    >;
    components: { schemas: Record<string, unknown> };
  }
  const described = async (): Promise<Api> => (await (await server.ask('/api/openapi.json')).json()) as Api;

  // OpenAPI Specification 3.1.0, sections 4.8.1 (openapi, info), 4.8.9 (path templating), 4.8.10 (responses), 4.8.12 (parameters)
  test('is OpenAPI 3.1: every path parameter is declared and required, every operation has responses, every reference leads somewhere', async () => {
    const api = await described();
    expect(api.openapi).toMatch(/^3\.1\.\d+$/);
    const operations = Object.entries(api.paths).flatMap(([path, methods]) => Object.values(methods).map((one) => ({ path, one })));
    expect(operations.length).toBeGreaterThan(15);
    for (const { path, one } of operations) {
      const named = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();
      const declared = (one.parameters ?? []).filter((parameter) => parameter.in === 'path');
      expect(declared.map(({ name }) => name).sort(), path).toEqual(named);
      expect(
        declared.every(({ required }) => required === true),
        path,
      ).toBe(true);
      expect(Object.keys(one.responses), path).toContain('default');
    }
    for (const [, name] of JSON.stringify(api).matchAll(/"#\/components\/schemas\/(\w+)"/g))
      expect(Object.keys(api.components.schemas)).toContain(name);
  });

  test('lists every route that answers, and no other', async () => {
    const { paths } = await described();
    const all = Object.entries(paths).flatMap(([path, methods]) => Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`));
    expect(all.length).toBeGreaterThan(15);
    expect(all.sort()).toEqual(server.routes().sort());
  });
});
