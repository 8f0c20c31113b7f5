import { randomBytes, randomUUID } from 'node:crypto';
import { setMaxListeners } from 'node:events';
import type { Server } from 'node:http';
import { availableParallelism, networkInterfaces } from 'node:os';
import { setTimeout as wait } from 'node:timers/promises';
import { serve } from '@hono/node-server';
import { CasebookRefused } from '../app/casebook/casebook-refused.ts';
import type { CasebookStore } from '../app/casebook/casebook-store.ts';
import { createDesk } from '../app/casebook/create-desk.ts';
import { createRunDesk } from '../app/circuit/run-desk.ts';
import type { DrawCircuit } from '../app/drawn-circuit.ts';
import { type Refusal, refuse, sentence } from '../core/quantity/refusal.ts';
import { TOKEN_QUERY } from './access.ts';
import { createServer } from './create-server.ts';

export const LOOPBACK = '127.0.0.1';
export const USUAL_PORT = 4810;
const TOKEN_BYTES = 32;
const SETTLE_MS = 2000; // how long the list of cases may lag behind what is entered
const STOP_MS = 1200; // for requests under way when the server is asked to end
const REST_MS = 400; // for what they still have to undo once their connections are cut
const STALE_UPLOAD_MS = 24 * 3600 * 1000;

export interface Running {
  /** Addresses to open, the first on this machine; with the token where one is demanded. */
  readonly links: readonly string[];
  /** Ends requests, writes what is owed, closes the casebook. */
  stop(): Promise<void>;
}

export interface Starting {
  readonly store: CasebookStore;
  readonly pages: string;
  /** 0 asks for any free port. */
  readonly port: number;
  readonly host: string;
  /** Draws a schematic; left out, it is drawn in the server's own thread. */
  readonly draw?: DrawCircuit;
}

/** Starts the workspace. Beyond loopback nobody gets in without the token in the printed link. */
export async function runServer({ store, pages, port, host, draw }: Starting): Promise<Running | Refusal> {
  const now = (): string => new Date().toISOString();
  const desk = createDesk(store, { now, newId: randomUUID, ...(draw === undefined ? {} : { draw }) });
  // one processor stays with the pages
  const runs = createRunDesk({ store, desk, now, workers: Math.max(1, availableParallelism() - 1) });
  const open = host === LOOPBACK || host === 'localhost' || host === '::1';
  const token = open ? null : randomBytes(TOKEN_BYTES).toString('base64url');
  const hosts: string[] = [];
  const stopping = new AbortController();
  setMaxListeners(0, stopping.signal); // one for each open tab
  const access = { hosts, token, now: () => performance.now() };
  const app = createServer({ store, desk, runs, pages, access, now, stopping: stopping.signal });
  const underWay = new Set<Promise<unknown>>();
  const fetch: Fetch = (request, env) => {
    const work = Promise.resolve(app.fetch(request, env as object));
    underWay.add(work);
    const done = (): boolean => underWay.delete(work);
    work.then(done, done);
    return work;
  };
  const server = await listen(fetch, port, host);
  if (!('close' in server)) return server;
  const real = (server.address() as { port: number }).port;
  const names = open ? ['127.0.0.1', 'localhost', '[::1]'] : ['127.0.0.1', 'localhost', ...addressesOf(host)];
  hosts.push(...names.map((name) => `${name.toLowerCase()}:${real}`));
  await store.files.sweep(new Date(Date.now() - STALE_UPLOAD_MS).toISOString());
  const settling = setInterval(() => void desk.settle().catch(tell), SETTLE_MS);
  settling.unref();
  const refreshing = desk.refresh(stopping.signal).catch((error: unknown) => console.error(error));
  const shown = open ? [inAddress(host)] : addressesOf(host);
  return {
    links: shown.map((name) => `http://${name}:${real}/${token === null ? '' : `?${TOKEN_QUERY}=${token}`}`),
    async stop() {
      clearInterval(settling);
      runs.close();
      stopping.abort();
      await Promise.all([end(server), refreshing]);
      await Promise.race([Promise.allSettled(underWay), wait(REST_MS, undefined, { ref: false })]);
      // what is owed to the list is made again at the next start where there was no room for it
      await desk.settle().catch(tell);
      await store.close();
    },
  };
}

/** A full disk is said in one sentence; a defect with all that is known of it. */
function tell(error: unknown): void {
  console.error(error instanceof CasebookRefused ? sentence(error.refusal) : error);
}

type Fetch = (request: Request, env: unknown) => Promise<Response>;

function listen(fetch: Fetch, port: number, hostname: string): Promise<Server | Refusal> {
  return new Promise((resolve) => {
    const server = serve({ fetch, port, hostname }, () => resolve(server)) as Server;
    server.once('error', (error: NodeJS.ErrnoException) => {
      const taken = error.code === 'EADDRINUSE';
      resolve(
        taken
          ? refuse('port-taken', `${hostname}:${port}`, 'a port that nothing else listens on; give another with --port')
          : refuse('cannot-listen', `${hostname}:${port}`, `an address of this machine (${error.code ?? 'unknown'})`),
      );
    });
  });
}

/** As it stands in an address: RFC 3986, 3.2.2 sets an address of version 6 in brackets. */
function inAddress(host: string): string {
  return host.includes(':') ? `[${host}]` : host;
}

/** Under which a machine on the same network can reach this one. */
function addressesOf(host: string): string[] {
  if (host !== '0.0.0.0' && host !== '::') return [inAddress(host)];
  const all = Object.values(networkInterfaces()).flatMap((list) => list ?? []);
  return all.filter(({ family, internal }) => family === 'IPv4' && !internal).map(({ address }) => address);
}

function end(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const late = setTimeout(() => {
      server.closeAllConnections();
    }, STOP_MS);
    late.unref();
    server.close(() => {
      clearTimeout(late);
      resolve();
    });
    server.closeIdleConnections();
  });
}
