import { randomUUID } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CasebookStore } from '../../src/app/casebook/casebook-store.ts';
import { createDesk } from '../../src/app/casebook/create-desk.ts';
import { createRunDesk } from '../../src/app/circuit/run-desk.ts';
import type { Access } from '../../src/server/access.ts';
import { createServer } from '../../src/server/create-server.ts';
import { mustOpen, scratchFolder } from '../store/scratch-casebook.ts';

/** Under which the server of these tests answers. */
export const OWN = '127.0.0.1:4810';

export interface Started {
  readonly store: CasebookStore;
  /** `from` is the address at the other end of the connection. */
  ask(path: string, init?: RequestInit, from?: string): Promise<Response>;
  /** Every route of the interface that answers, as "GET /api/casebook"; the description itself left out. */
  routes(): string[];
  /** A body as JSON. */
  send(method: string, path: string, body: unknown): Promise<Response>;
  drop(): Promise<void>;
}

/** The whole server without a socket, over a real casebook in a folder of its own. */
export async function startWorkspace(more: Partial<Access> = {}): Promise<Started> {
  const { folder, path, drop } = scratchFolder();
  const pages = join(folder, 'pages');
  mkdirSync(join(pages, 'assets'), { recursive: true });
  writeFileSync(
    join(pages, 'index.html'),
    '<!doctype html><script type="module" src="/assets/a.js"></script><link rel="stylesheet" href="/assets/a.css">',
  );
  writeFileSync(join(pages, 'assets', 'a.js'), 'export {};');
  writeFileSync(join(folder, 'secret.js'), 'beside the pages');
  const store = await mustOpen(path);
  const now = (): string => new Date().toISOString();
  const desk = createDesk(store, { now, newId: randomUUID });
  const stopping = new AbortController();
  const access: Access = { hosts: [OWN], token: null, now: () => 0, ...more };
  const app = createServer({
    store,
    desk,
    runs: createRunDesk({ store, desk, now, workers: 1 }),
    pages,
    access,
    now,
    stopping: stopping.signal,
  });
  const ask = async (at: string, init: RequestInit = {}, from = '127.0.0.1'): Promise<Response> => {
    const headers = new Headers(init.headers);
    if (!headers.has('host')) headers.set('host', OWN);
    return app.request(`http://${OWN}${at}`, { ...init, headers, duplex: 'half' } as RequestInit, {
      incoming: { socket: { remoteAddress: from } },
    });
  };
  return {
    store,
    ask,
    routes: () => [
      ...new Set(
        app.routes
          .filter(({ method, path: at }) => method !== 'ALL' && at.startsWith('/api/') && at !== '/api/openapi.json')
          .map(({ method, path: at }) => `${method} ${at.replace(/:(\w+)/g, '{$1}')}`),
      ),
    ],
    send: (method, at, body) => ask(at, { method, headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
    async drop() {
      stopping.abort();
      await desk.settle();
      await store.close();
      drop();
    },
  };
}

/** The id of a new case. */
export async function makeCase({ send }: Started, name: string): Promise<string> {
  const made = await send('POST', '/api/cases', { name, by: 'test' });
  if (made.status !== 200) throw new Error(await made.text());
  return ((await made.json()) as { id: string }).id;
}

export interface Told {
  readonly code: string;
  readonly detail: string;
  readonly place: string;
  readonly status: number;
}

/** What a refused request was told, as RFC 9457 ("Problem Details for HTTP APIs") shapes it. */
export async function toldBy(response: Response): Promise<Told> {
  if (response.headers.get('content-type') !== 'application/problem+json')
    throw new Error(`not a problem: ${response.status} ${await response.text()}`);
  return (await response.json()) as Told;
}
