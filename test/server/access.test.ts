import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeCase, OWN, type Started, startWorkspace, toldBy } from './start-workspace.ts';

const TOKEN = 'a-token-of-this-test-that-nobody-guesses';
let server: Started;

describe('a server on this machine', () => {
  beforeEach(async () => {
    server = await startWorkspace();
  });
  afterEach(() => server.drop());

  test.each(['evil.example', 'evil.example:4810', '127.0.0.1:4811', '127.0.0.1.evil.example:4810', ''])(
    'does not answer under the foreign name "%s", to which a name server could point this machine',
    async (host) => {
      const answer = await server.ask('/api/casebook', { headers: { host } });
      expect((await toldBy(answer)).code).toBe('foreign-host');
      expect(answer.status).toBe(421);
    },
  );

  test.each(['http://evil.example', 'null', `https://${OWN}`, `http://${OWN}.evil.example`])(
    'takes no entry from a page of %s, and nothing is made',
    async (origin) => {
      const answer = await server.ask('/api/cases', {
        method: 'POST',
        headers: { origin, 'content-type': 'application/json' },
        body: JSON.stringify({ name: 'planted', by: 'x' }),
      });
      expect((await toldBy(answer)).code).toBe('foreign-origin');
      const list = (await (await server.ask('/api/casebook')).json()) as { total: number };
      expect(list.total).toBe(0);
    },
  );

  test.each(['cross-site', 'same-site'])('gives no data to a page of another site (%s)', async (site) => {
    const answer = await server.ask('/api/casebook', { headers: { 'sec-fetch-site': site } });
    expect(answer.status).toBe(403);
  });

  test('lets a link on another site open the workspace, but not its data', async () => {
    const headers = { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate' };
    expect((await server.ask('/', { headers })).status).toBe(200);
    expect((await server.ask('/api/casebook', { headers })).status).toBe(403);
  });

  test('takes entries of its own pages', async () => {
    const answer = await server.ask('/api/cases', {
      method: 'POST',
      headers: { origin: `http://${OWN}`, 'sec-fetch-site': 'same-origin', 'content-type': 'application/json' },
      body: JSON.stringify({ name: 'own', by: 'x' }),
    });
    expect(answer.status).toBe(200);
  });

  test('a form of another site, which can only send text, is not taken for JSON', async () => {
    const answer = await server.ask('/api/cases', {
      method: 'POST',
      headers: { 'content-type': 'text/plain' },
      body: JSON.stringify({ name: 'planted', by: 'x' }),
    });
    expect(await toldBy(answer)).toMatchObject({ status: 415, code: 'not-json' });
    expect((await (await server.ask('/api/casebook')).json()) as object).toMatchObject({ total: 0 });
  });
});

describe('what a page may do', () => {
  beforeEach(async () => {
    server = await startWorkspace();
  });
  afterEach(() => server.drop());

  test('every script and style of the page carries the nonce of this answer, and nothing else may run', async () => {
    const [first, second] = await Promise.all([server.ask('/'), server.ask('/case/x')]);
    const policy = first.headers.get('content-security-policy') ?? '';
    const nonce = /'nonce-([\w-]{22})'/.exec(policy)?.[1];
    expect(nonce).toBeDefined();
    const page = await first.text();
    expect(page.match(/<(script|link)\b/g)).toHaveLength(2);
    expect(page.match(new RegExp(`<(script|link) nonce="${nonce}"`, 'g'))).toHaveLength(2);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain('unsafe');
    expect(second.headers.get('content-security-policy')).not.toBe(policy);
  });

  test.each(['/', '/api/casebook', '/assets/a.js', '/api/nothing', '/assets/none.js'])(
    '%s is guarded by the same headers, and demands no encryption of loopback',
    async (path) => {
      const { headers } = await server.ask(path);
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
      expect(headers.get('cross-origin-resource-policy')).toBe('same-origin');
      expect(headers.has('strict-transport-security')).toBe(false);
      expect(headers.has('access-control-allow-origin')).toBe(false);
    },
  );

  test('the report keeps its own policy and cannot be framed', async () => {
    const id = await makeCase(server, 'quay cube');
    const report = await server.ask(`/api/cases/${id}/report`);
    const policy = report.headers.get('content-security-policy') ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain('sha256-');
    expect(policy).not.toContain('unsafe');
    expect(policy).not.toContain('&#');
  });

  test.each(['/assets/../../secret.js', '/assets/..%2f..%2fsecret.js', '/assets/%2e%2e/%2e%2e/secret.js', '/assets/..%5c..%5csecret.js'])(
    '%s does not reach beside the pages',
    async (path) => expect(await (await server.ask(path)).text()).not.toContain('beside the pages'),
  );

  test.each(['/%E0%A4%A', '/assets/a%00.js', '/assets/%'])('the broken address %s is no defect of the tool', async (path) => {
    const { status, code } = await toldBy(await server.ask(path));
    expect([400, 404]).toContain(status);
    expect(code).toBe('no-such-page');
  });
});

describe('a server that other machines reach', () => {
  let clock = 0;
  beforeEach(async () => {
    clock = 0;
    server = await startWorkspace({ token: TOKEN, now: () => clock });
  });
  afterEach(() => server.drop());
  const withCookie = (value: string): RequestInit => ({ headers: { cookie: `mainsworthy-access=${value}` } });

  test.each(['/', '/api/casebook', '/api/openapi.json', '/assets/a.js'])('shows nothing of %s without the token', async (path) => {
    expect((await toldBy(await server.ask(path))).code).toBe('token-missing');
  });

  test('turns the token of the link into a cookie that no script reads, and takes it out of the address', async () => {
    const answer = await server.ask(`/case/x?a=1&token=${TOKEN}`);
    expect(answer.status).toBe(303);
    expect(answer.headers.get('location')).toBe('/case/x?a=1');
    const cookie = answer.headers.get('set-cookie') ?? '';
    expect(cookie).toMatch(/HttpOnly/);
    expect(cookie).toMatch(/SameSite=Strict/);
    expect(cookie).not.toMatch(/Domain/i);
    expect((await server.ask('/api/casebook', withCookie(TOKEN))).status).toBe(200);
  });

  test('a token that is too short, too long, or one letter off opens nothing', async () => {
    for (const wrong of ['', TOKEN.slice(1), `${TOKEN}x`, TOKEN.toUpperCase()])
      expect((await server.ask('/api/casebook', withCookie(wrong))).status, wrong).toBe(401);
  });

  test('a wrong cookie, of an earlier start, is taken away', async () => {
    const answer = await server.ask('/', withCookie('old'));
    expect(answer.headers.get('set-cookie')).toMatch(/^mainsworthy-access=; Max-Age=0/);
  });

  test('after ten wrong tokens in a minute from one machine even the right one waits, with the number in the sentence', async () => {
    for (let tried = 0; tried < 10; tried += 1) expect((await server.ask(`/?token=wrong-${tried}`)).status).toBe(401);
    const late = await server.ask(`/?token=${TOKEN}`);
    expect(late.status).toBe(429);
    expect((await toldBy(late)).detail).toContain('10');
    expect((await server.ask(`/?token=${TOKEN}`, {}, '192.0.2.7')).status, 'another machine is not locked out').toBe(303);
    clock = 60_001;
    expect((await server.ask(`/?token=${TOKEN}`)).status).toBe(303);
  });
});
