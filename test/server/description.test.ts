import { createHash } from 'node:crypto';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { OWN, type Started, startWorkspace } from './start-workspace.ts';

type Json = Record<string, unknown>;
interface Media {
  readonly schema?: Json;
}
interface Operation {
  readonly requestBody?: { readonly required?: boolean; readonly description?: string; readonly content: Readonly<Record<string, Media>> };
  readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, Media>> }>>;
}
interface Api {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, Json>> };
}

const TOKEN = 'a-token-of-this-test-that-nobody-guesses';
const NEAR = '192.0.2.20:4810'; // RFC 5737: an address for documents
/** Say all they have to say in their address. */
const WITHOUT_BODY = new Set(['POST /api/cases/{id}/restore', 'POST /api/cases/{id}/runs/stop', 'POST /api/cases/{id}/published']);

let server: Started;
let api: Api;
beforeAll(async () => {
  server = await startWorkspace({ token: TOKEN, hosts: [OWN, NEAR] });
  api = (await (await ask('GET', '/api/openapi.json')).json()) as Api;
});
afterAll(() => server.drop());

function ask(method: string, path: string, body?: unknown, media = 'application/json'): Promise<Response> {
  const sent = body === undefined ? undefined : body instanceof Uint8Array ? (body as Uint8Array<ArrayBuffer>) : JSON.stringify(body);
  const headers = { cookie: `mainsworthy-access=${TOKEN}`, ...(sent === undefined ? {} : { 'content-type': media }) };
  return server.ask(path, { method, headers, ...(sent === undefined ? {} : { body: sent }) });
}

function operationOf(route: string): Operation {
  const [method = '', path = ''] = route.split(' ');
  const found = api.paths[path]?.[method.toLowerCase()];
  if (found === undefined) throw new Error(`${route} is not described`);
  return found;
}
const routes = (): string[] =>
  Object.entries(api.paths).flatMap(([path, methods]) => Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`));

/** A schema of the description as a reader of JSON Schema takes it, with what it refers to beneath it. */
function readerOf(schema: Json): z.ZodType {
  const whole = { ...schema, $defs: api.components.schemas };
  const text = JSON.stringify(whole).replaceAll('#/components/schemas/', '#/$defs/');
  return z.fromJSONSchema(JSON.parse(text) as Parameters<typeof z.fromJSONSchema>[0]);
}

/** Holds an answer against what stands in the description for it: its status, its media type, and its shape where it is JSON. */
async function holds(route: string, response: Response): Promise<unknown> {
  const { responses } = operationOf(route);
  const described = responses[String(response.status)] ?? responses['default'];
  if (response.status === 204) {
    expect(described?.content, route).toBeUndefined();
    return undefined;
  }
  const media = (response.headers.get('content-type') ?? '').split(';')[0] ?? '';
  const content = described?.content ?? {};
  expect(Object.keys(content), `${route} answers ${response.status} as ${media}`).toContain(
    Object.hasOwn(content, media) ? media : 'application/octet-stream',
  );
  if (!media.endsWith('json')) return response.body;
  const value = await response.json();
  const read = readerOf(content[media]?.schema ?? {}).safeParse(value);
  expect(read.success ? '' : `${route}: ${JSON.stringify(read.error.issues[0])}`).toBe('');
  return value;
}

/** The text of an instrument file, and a photo of one pixel. */
const TEXT = new TextEncoder().encode('A;V\n0.0;5.10\n0.5;5.05\n1.0;5.01\n');
const photo = (): Promise<Buffer> =>
  sharp({ create: { width: 8, height: 8, channels: 3, background: '#888' } })
    .png()
    .toBuffer();

describe('the description of the interface', () => {
  // OpenAPI Specification 3.1.0, 4.8.10 (operation), 4.8.13 (request body), 4.8.14.2 (bytes as a body)
  test('says of every route what it takes and what it gives', () => {
    for (const route of routes()) {
      const { requestBody, responses } = operationOf(route);
      const takes = /^(POST|PUT) /.test(route) && !WITHOUT_BODY.has(route);
      expect(requestBody !== undefined, `${route} takes a body`).toBe(takes);
      for (const { schema } of Object.values(requestBody?.content ?? {})) expect(schema, route).toBeDefined();
      const given = Object.entries(responses).filter(([status]) => status.startsWith('2'));
      expect(given.length, route).toBe(1);
      for (const [status, { content }] of given)
        if (status !== '204') for (const { schema } of Object.values(content ?? { none: {} })) expect(schema, route).toBeDefined();
      expect(Object.keys(responses['default']?.content ?? {}), route).toEqual(['application/problem+json']);
    }
  });

  test('gives the media types and the end of the bytes that are streamed', () => {
    const bodies = ['POST /api/cases/{id}/files', 'POST /api/unpack'].map((route) => operationOf(route).requestBody);
    for (const body of bodies) {
      expect(body?.required).toBe(true);
      const ends = Object.values(body?.content ?? {}).map(({ schema }) => schema?.['maxLength']);
      expect(new Set(ends).size).toBe(1);
      expect(body?.description).toContain(String(ends[0]));
    }
    expect(Object.keys(bodies[0]?.content ?? {})).toEqual(expect.arrayContaining(['image/jpeg', 'text/csv', 'application/octet-stream']));
    expect(Object.keys(bodies[1]?.content ?? {})).toContain('application/zip');
  });

  test('fits what the running server answers, route by route, problems too', async () => {
    const id = await (async () =>
      ((await holds('POST /api/cases', await ask('POST', '/api/cases', { name: 'Quay cube', by: 't' }))) as { id: string }).id)();
    const at = `/api/cases/${id}`;
    const picture = await photo();
    const sha256 = createHash('sha256').update(picture).digest('hex');
    await ask('POST', `${at}/files?name=a.png`, new Uint8Array(picture), 'image/png'); // the case names it before the list below comes to it
    const changes = [
      { at: '/case/sample', was: 'A', to: 'B' },
      { at: '/case/files/top', to: { id: 'top', path: 'files/a.png', sha256, bytes: picture.length, media: 'image/png' } },
      { at: '/case/exhibits/photo-1', to: { id: 'photo-1', kind: 'photo', file: 'top', of: 'top' } },
    ];
    const edit = { by: 't', base: 1, step: 's1', name: { key: 'entry', args: {} }, changes };
    const pad = { id: 'pad-1', photo: 'photo-1', at: [3, 4], pin: 'R2 2', net: 'd' };
    const archive = async (): Promise<Uint8Array> => new Uint8Array(await (await ask('GET', `${at}/pack`)).arrayBuffer());
    const step = async (): Promise<string> => {
      const { view } = (await (await ask('GET', at)).json()) as { view: { next: { stops: { step: string | null }[] }[] } };
      return encodeURIComponent(view.next.flatMap(({ stops }) => stops.flatMap((stop) => stop.step ?? []))[0] ?? '');
    };
    const asked: readonly (readonly [string, () => Promise<Response>])[] = [
      ['GET /api/access', () => ask('GET', '/api/access')],
      ['GET /api/cases/{id}/phone', () => ask('GET', `${at}/phone`)],
      ['GET /api/form', () => ask('GET', '/api/form')],
      ['GET /api/cases/{id}', () => ask('GET', at)],
      ['POST /api/cases/{id}/files', () => ask('POST', `${at}/files?name=a.csv`, TEXT, 'text/csv')],
      ['POST /api/cases/{id}/files', () => ask('POST', `${at}/files?name=a.png`, new Uint8Array(picture), 'image/png')],
      ['POST /api/cases/{id}/edits', () => ask('POST', `${at}/edits`, edit)],
      ['POST /api/cases/{id}/undo', () => ask('POST', `${at}/undo`, { by: 't' })],
      ['POST /api/cases/{id}/redo', () => ask('POST', `${at}/redo`, { by: 't' })],
      [
        'POST /api/cases/{id}/circuit',
        () => ask('POST', `${at}/circuit`, { by: 't', base: 4, step: 's2', text: 'R1 4k7: a, b\nR2 1k: b, c\n' }),
      ],
      ['POST /api/cases/{id}/pads', () => ask('POST', `${at}/pads`, { by: 't', base: 5, step: 's3', pad })],
      ['GET /api/cases/{id}/circuit', () => ask('GET', `${at}/circuit`)],
      ['GET /api/cases/{id}/runs', () => ask('GET', `${at}/runs`)],
      ['POST /api/cases/{id}/runs', () => ask('POST', `${at}/runs`, { kind: 'points', level: null, by: 't' })],
      ['POST /api/cases/{id}/runs/stop', () => ask('POST', `${at}/runs/stop`)],
      ['POST /api/cases/{id}/runs/lines', () => ask('POST', `${at}/runs/lines`, { level: '5v', point: 'nominal-full' })],
      ['GET /api/cases/{id}/runs/events', () => ask('GET', `${at}/runs/events`)],
      ['GET /api/cases/{id}/circuit/live', () => ask('GET', `${at}/circuit/live`)],
      ['GET /api/cases/{id}/circuit/drawing', () => ask('GET', `${at}/circuit/drawing`)],
      ['GET /api/cases/{id}/circuit/sheet', () => ask('GET', `${at}/circuit/sheet?paper=A3`)],
      ['GET /api/cases/{id}/circuit/pdf', () => ask('GET', `${at}/circuit/pdf?paper=A3`)],
      ['GET /api/cases/{id}/steps/{step}', async () => ask('GET', `${at}/steps/${await step()}`)],
      ['GET /api/cases/{id}/report', () => ask('GET', `${at}/report`)],
      ['PUT /api/cases/{id}/screen/{key}', () => ask('PUT', `${at}/screen/open`, { value: 'x' })],
      ['GET /api/cases/{id}/files/{sha256}', () => ask('GET', `${at}/files/${sha256}`)],
      ['GET /api/cases/{id}/files/{sha256}/thumb', () => ask('GET', `${at}/files/${sha256}/thumb`)],
      ['POST /api/cases/{id}/published', () => ask('POST', `${at}/published`)],
      ['GET /api/cases/{id}/published', () => ask('GET', `${at}/published`)],
      ['GET /api/cases/{id}/publishing', () => ask('GET', `${at}/publishing`)],
      ['GET /api/cases/{id}/published/{number}', () => ask('GET', `${at}/published/1`)],
      ['GET /api/cases/{id}/published/{number}/report', () => ask('GET', `${at}/published/1/report`)],
      ['GET /api/cases/{id}/published/{number}/moved', () => ask('GET', `${at}/published/1/moved`)],
      ['GET /api/casebook', () => ask('GET', '/api/casebook?places=delivery/current')],
      ['GET /api/cases/{id}/pack', () => ask('GET', `${at}/pack`)],
      ['PUT /api/cases/{id}/archived', () => ask('PUT', `${at}/archived`, { archived: true })],
      ['POST /api/unpack', async () => ask('POST', '/api/unpack', await archive(), 'application/zip')],
      ['DELETE /api/cases/{id}', () => ask('DELETE', at)],
      ['POST /api/cases/{id}/restore', () => ask('POST', `${at}/restore`)],
    ];
    for (const [route, send] of asked) {
      const response = await send();
      // the same case is in this casebook already: that is the answer to its own archive; nobody traced its circuit, so none is run
      expect([route, response.status]).toEqual([
        route,
        route === 'POST /api/unpack'
          ? 409
          : route === 'POST /api/cases/{id}/runs'
            ? 422
            : route.endsWith('/runs/lines')
              ? 404
              : route.startsWith('DELETE') || route.includes('screen') || route.endsWith('/runs/stop')
                ? 204
                : 200,
      ]);
      const body = await holds(route, response);
      if (body instanceof ReadableStream) await body.cancel();
    }
    const events = await ask('GET', `${at}/events`);
    const stream = await holds('GET /api/cases/{id}/events', events);
    await (stream as ReadableStream).cancel();
    // every other route answers somebody who asks for nothing that is there
    const told = new Set([...asked.map(([route]) => route), 'POST /api/cases', 'GET /api/cases/{id}/events']);
    for (const route of routes().filter((one) => !told.has(one))) {
      const [method = '', path = ''] = route.split(' ');
      const answered = await ask(method, path.replaceAll(/\{\w+\}/g, 'nobody'), method === 'GET' ? undefined : {});
      expect([route, answered.ok]).toEqual([route, false]);
      await holds(route, answered);
    }

    await holds('GET /api/cases/{id}', await ask('GET', '/api/cases/nobody'));
    await holds('POST /api/cases/{id}/edits', await ask('POST', `${at}/edits`, { ...edit, changes: [] }));
    await holds('POST /api/cases/{id}/files', await ask('POST', `${at}/files?name=a.svg`, new TextEncoder().encode('<svg/>')));
  });

  test('would not fit an answer that lacks what it promises', () => {
    const schema = operationOf('POST /api/cases').responses['200']?.content?.['application/json']?.schema ?? {};
    const head = { id: 'a', revision: 1, created: '', changed: '', archived: null, removed: null };
    expect(readerOf(schema).safeParse(head).success).toBe(true);
    expect(readerOf(schema).safeParse({ ...head, revision: 'one' }).success).toBe(false);
    const { removed: _removed, ...less } = head;
    expect(readerOf(schema).safeParse(less).success).toBe(false);
  });
});
