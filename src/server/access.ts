import { createHash, timingSafeEqual } from 'node:crypto';
import type { Context, MiddlewareHandler, Next } from 'hono';
import { deleteCookie, getCookie, setCookie } from 'hono/cookie';
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
const WRONG_TRIES = 10; // wrong tokens in one window, from anywhere, before every token is refused for its rest; house choice
const WINDOW_MS = 60_000;
const UNSAFE = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);

/**
 * Refuses what no page of ours would ask: a Host that is not ours (a foreign name pointed at this machine), another site's page writing or
 * reading, and, where a token is demanded, whoever does not have it. The token comes once in the address and is a cookie from then on.
 */
export function guardAccess(access: Access): MiddlewareHandler {
  const wrong = { count: 0, since: Number.NEGATIVE_INFINITY };
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
    return access.token === null ? next() : checkToken(context, next, access.token, access.now, wrong);
  };
}

async function checkToken(
  context: Context,
  next: Next,
  token: string,
  now: () => number,
  wrong: { count: number; since: number },
): Promise<Response | undefined> {
  if (now() - wrong.since > WINDOW_MS) {
    wrong.count = 0;
    wrong.since = now();
  }
  const given = context.req.query(TOKEN_QUERY);
  const kept = getCookie(context, COOKIE);
  if (given === undefined && kept === undefined)
    return refused(401, 'token-missing', 'Open the link that the server printed; it carries the access token.');
  if (wrong.count >= WRONG_TRIES)
    return refused(429, 'too-many-tries', `More than ${WRONG_TRIES} wrong tokens in a minute: wait a minute and open the printed link.`);
  if (!isSame(given ?? kept ?? '', token)) {
    wrong.count += 1;
    deleteCookie(context, COOKIE);
    return refused(401, 'token-wrong', 'That is not the access token of this server; open the link that it printed.');
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

/** In the same time whatever the text. */
function isSame(a: string, b: string): boolean {
  const digest = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(a), digest(b));
}

function refused(status: number, code: string, detail: string): Response {
  return answerProblem(toProblem(status, code, detail));
}
