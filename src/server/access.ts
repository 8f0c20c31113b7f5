import { createHash, timingSafeEqual } from 'node:crypto';
import type { Context, MiddlewareHandler, Next } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';
import { answerProblem, toProblem } from './problem.ts';

/** Who may ask: names under which the server answers, and the token that is demanded when it can be reached from other machines. */
export interface Access {
  /** "127.0.0.1:4810": host and port as they stand in a Host header, small letters. */
  readonly hosts: readonly string[];
  readonly token: string | null;
  /** Milliseconds of a steady clock, for the limit on wrong tokens. */
  readonly now: () => number;
}

export const TOKEN_QUERY = 'token';
const COOKIE = 'mainsworthy-access';
const WRONG_TRIES = 10; // wrong tokens in one window from one machine, before all its tokens are refused for the rest; house choice
const WINDOW_MS = 60_000;
const MOST_MACHINES = 1000; // remembered at once; beyond, the oldest is forgotten; house choice
const UNSAFE = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);

/**
 * Refuses what no page of ours would ask: a Host that is not ours (a foreign name pointed at this machine), another site's page writing or
 * reading, and, where a token is demanded, whoever does not have it. The token comes once in the address and is a cookie from then on.
 */
export function guardAccess(access: Access): MiddlewareHandler {
  // by machine: an old link on one phone must not lock out the person at the bench
  const wrong = new Map<string, Tries>();
  return async (context, next) => {
    const host = (context.req.header('host') ?? '').toLowerCase();
    if (!access.hosts.includes(host)) return refused(421, 'foreign-host', `This server does not answer to the name "${host}".`);
    const site = context.req.header('sec-fetch-site');
    const origin = context.req.header('origin');
    const isOwn = origin === undefined || access.hosts.some((own) => origin === `http://${own}`);
    const isNavigation =
      context.req.method === 'GET' && context.req.header('sec-fetch-mode') === 'navigate' && !context.req.path.startsWith('/api/');
    if (!isOwn || (site !== undefined && site !== 'same-origin' && site !== 'none' && !isNavigation))
      return refused(403, 'foreign-origin', 'Only pages of this server may ask it.');
    if (UNSAFE.has(context.req.method) && origin === undefined && site !== undefined && site !== 'same-origin')
      return refused(403, 'foreign-origin', 'Only pages of this server may write.');
    return access.token === null ? next() : checkToken(context, next, access.token, triesOf(wrong, machineOf(context), access.now()));
  };
}

interface Tries {
  count: number;
  readonly since: number;
}

function triesOf(wrong: Map<string, Tries>, machine: string, now: number): Tries {
  const known = wrong.get(machine);
  if (known !== undefined && now - known.since <= WINDOW_MS) return known;
  wrong.delete(machine);
  const [oldest] = wrong.keys();
  if (wrong.size >= MOST_MACHINES && oldest !== undefined) wrong.delete(oldest);
  const fresh = { count: 0, since: now };
  wrong.set(machine, fresh);
  return fresh;
}

/** The address at the other end of the connection; never what a header claims. */
function machineOf(context: Context): string {
  const { incoming } = (context.env ?? {}) as { incoming?: { socket?: { remoteAddress?: string } } };
  return incoming?.socket?.remoteAddress ?? '';
}

async function checkToken(context: Context, next: Next, token: string, wrong: Tries): Promise<Response | undefined> {
  const given = context.req.query(TOKEN_QUERY);
  const kept = getCookie(context, COOKIE);
  if (given === undefined && kept === undefined)
    return refused(401, 'token-missing', 'Open the link that the server printed; it carries the access token.');
  if (wrong.count >= WRONG_TRIES)
    return refused(429, 'too-many-tries', `More than ${WRONG_TRIES} wrong tokens in a minute: wait a minute and open the printed link.`);
  if (!isSame(given ?? kept ?? '', token)) {
    wrong.count += 1;
    const answered = refused(401, 'token-wrong', 'That is not the access token of this server; open the link that it printed.');
    // a cookie of an earlier start goes, or each picture of the page would count as another try
    if (kept !== undefined && given === undefined) answered.headers.set('set-cookie', `${COOKIE}=; Max-Age=0; Path=/`);
    return answered;
  }
  if (given === undefined) {
    await next();
    return undefined;
  }
  setCookie(context, COOKIE, token, { httpOnly: true, sameSite: 'Strict', path: '/' });
  const url = new URL(context.req.url);
  url.searchParams.delete(TOKEN_QUERY); // out of the address, so that it stays in no history
  return context.redirect(`${url.pathname}${url.search}`, 303);
}

/** Whether a Host, with or without its port, is this machine to itself. */
export function isLoopbackName(host: string): boolean {
  return /^(127\.0\.0\.1|localhost|\[::1\])(:|$)/.test(host);
}

/** In the same time whatever the text. */
function isSame(a: string, b: string): boolean {
  const digest = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(a), digest(b));
}

function refused(status: number, code: string, detail: string): Response {
  return answerProblem(toProblem(status, code, detail));
}
