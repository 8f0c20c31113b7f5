import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const COMMAND = join(ROOT, 'dist', 'cli', 'main.js');
const CHROMIUM = '/usr/bin/chromium';
const START_MS = 15_000;

/** A real workspace on a casebook of its own, as a person starts it, and a real browser that writes down whom it asks. */
export interface TestWorkspace {
  readonly link: string;
  readonly casebook: string;
  readonly browser: Browser;
  /** A fresh page; every request and every complaint of it is kept. */
  page(options?: { width?: number; height?: number; dark?: boolean; reduced?: boolean }): Promise<TestPage>;
  /** Ends the server as a lid that closes does: at once, with nothing said. */
  kill(): Promise<void>;
  restart(): Promise<void>;
  stop(): Promise<void>;
}
export interface TestPage {
  readonly page: Page;
  readonly requests: string[];
  readonly complaints: string[];
}

/** `host`: an address beyond loopback to listen on; the link then carries the access token. */
export async function startWorkspace(cases: readonly string[] = [], host?: string): Promise<TestWorkspace> {
  const folder = mkdtempSync(join(tmpdir(), 'mainsworthy-web-'));
  const casebook = join(folder, 'test.casebook');
  for (const name of cases) {
    const { status, stderr } = spawnSync(process.execPath, [COMMAND, 'import', join(ROOT, 'examples', name), '--casebook', casebook]);
    if (status !== 0) throw new Error(String(stderr));
  }
  const browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  });
  let server = await serve(casebook, '0', host);
  const port = new URL(server.link).port;
  return {
    link: server.link,
    casebook,
    browser,
    async page({ width = 1440, height = 1000, dark = false, reduced = true } = {}) {
      const context = await browser.newContext({
        viewport: { width, height },
        colorScheme: dark ? 'dark' : 'light',
        reducedMotion: reduced ? 'reduce' : 'no-preference',
      });
      const page = await context.newPage();
      const requests: string[] = [];
      const complaints: string[] = [];
      page.on('request', (request) => requests.push(request.url()));
      page.on('pageerror', (error) => complaints.push(error.message));
      page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
      return { page, requests, complaints };
    },
    kill: () => killed(server.process),
    async restart() {
      server = await serve(casebook, port, host);
    },
    async stop() {
      await browser.close();
      await killed(server.process, 'SIGTERM');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function serve(casebook: string, port: string, host?: string): Promise<{ process: ChildProcess; link: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn(
      process.execPath,
      [COMMAND, 'serve', '--casebook', casebook, '--port', port, ...(host === undefined ? [] : ['--host', host])],
      {
        stdio: ['ignore', 'pipe', 'pipe'],
      },
    );
    let said = '';
    const late = setTimeout(() => reject(new Error(`no workspace after ${START_MS} ms: ${said}`)), START_MS);
    const hear = (chunk: Buffer): void => {
      said += chunk.toString();
      const link = /workspace at (http:\S+)/.exec(said)?.[1];
      if (link === undefined) return;
      clearTimeout(late);
      resolve({ process: child, link });
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.once('exit', (code) => {
      clearTimeout(late);
      reject(new Error(`the server ended with ${code}: ${said}`));
    });
  });
}

function killed(child: ChildProcess, signal: NodeJS.Signals = 'SIGKILL'): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill(signal);
  });
}
