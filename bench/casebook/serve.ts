import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { serve } from '@hono/node-server';
import { Hono } from 'hono';
import type { CasebookStore, CaseQuery } from '../../src/app/casebook/casebook-store.ts';

const WEB = 'dist/web';
const TYPES: Readonly<Record<string, string>> = {
  js: 'text/javascript',
  css: 'text/css',
  svg: 'image/svg+xml',
  woff2: 'font/woff2',
  html: 'text/html; charset=utf-8',
};
const CSP = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'; connect-src 'self'";

/** The list of cases and the page that draws it, on a free port of this machine; "/plain" is the reference. */
export async function serveList(store: CasebookStore, plain: string): Promise<{ origin: string; stop: () => void }> {
  const app = new Hono();
  app.get('/api/casebook', async (c) => {
    const query = c.req.query();
    const all = (name: string) => c.req.queries(name);
    const { sort } = query;
    const page = await store.cases.find({
      search: query['search'],
      failure: all('failure'),
      coverage: all('coverage'),
      hazard: all('hazard'),
      kind: all('kind'),
      claim: all('claim'),
      archived: query['archived'] === 'true',
      counted: query['counted'] !== 'false',
      places: query['places'],
      sort: sort?.startsWith('margin:') === true ? { margin: sort.slice('margin:'.length) } : (sort as CaseQuery['sort']),
      from: Number(query['from'] ?? 0),
      count: Number(query['count'] ?? 0),
    });
    return c.json(page);
  });
  app.get('/plain', (c) => c.html(plain));
  app.get('*', (c) => {
    const path = c.req.path.startsWith('/assets/') ? c.req.path : '/index.html';
    const type = TYPES[path.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
    return c.body(readFileSync(join(WEB, path)), 200, { 'content-type': type, 'content-security-policy': CSP });
  });
  return new Promise((resolve) => {
    const server = serve({ fetch: app.fetch, port: 0, hostname: '127.0.0.1' }, (info: AddressInfo) =>
      resolve({ origin: `http://127.0.0.1:${info.port}`, stop: () => server.close() }),
    );
  });
}
