import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { type ClientRequest, createServer, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { mustOpen, scratchFolder } from '../store/scratch-casebook.ts';
import { mainsworthy } from './run-command.ts';

const MOST_MS = 2000; // in which a server told to stop has ended
let scratch: ReturnType<typeof scratchFolder>;
const children: ChildProcess[] = [];
beforeEach(() => {
  scratch = scratchFolder();
});
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL');
  scratch.drop();
});

async function start(): Promise<{ child: ChildProcess; link: string }> {
  const child = spawn(process.execPath, ['dist/cli/main.js', 'serve', '--casebook', scratch.path, '--port', '0'], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  children.push(child);
  let said = '';
  const link = await new Promise<string>((resolve, reject) => {
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const found = /workspace at (http:\S+)\n[\s\S]*Ctrl C/.exec(said)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.once('exit', (code) => reject(new Error(`ended with ${code}: ${said}`)));
  });
  return { child, link };
}

async function newCase(link: string): Promise<string> {
  const answer = await fetch(new URL('/api/cases', link), {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ name: 'Quay cube', by: 'test' }),
  });
  return ((await answer.json()) as { id: string }).id;
}

function upload(link: string, id: string): { sending: ClientRequest; ended: Promise<void> } {
  const sending = request(new URL(`/api/cases/${id}/files?name=long.csv`, link), { method: 'POST' });
  const ended = new Promise<void>((resolve) => {
    sending.on('error', () => resolve());
    sending.on('response', (answer) =>
      answer
        .resume()
        .on('end', resolve)
        .on('error', () => resolve()),
    );
  });
  return { sending, ended };
}

const refusedWith = async (args: readonly string[], says: RegExp, code = 1): Promise<void> => {
  const ran = await mainsworthy(['serve', ...args]);
  expect(ran.err).toMatch(says);
  expect(ran.err).not.toMatch(/defect|\n\s+at /);
  expect(ran.code).toBe(code);
};

test.each(['SIGTERM', 'SIGINT'] as const)(
  '%s in the middle of an upload ends the server in two seconds; what was acknowledged is there, of the upload nothing',
  async (signal) => {
    const { child, link } = await start();
    const id = await newCase(link);
    const { sending, ended } = upload(link, id);
    sending.write('I,V\n'.repeat(500_000));
    await wait(200);
    const exit = new Promise<number | null>((resolve) => child.once('exit', resolve));
    const before = performance.now();
    child.kill(signal);
    expect(await exit).toBe(0);
    expect(performance.now() - before).toBeLessThan(MOST_MS);
    sending.destroy();
    await ended;
    const store = await mustOpen(scratch.path);
    expect((await store.cases.head(id))?.revision).toBe(1);
    expect(await store.check()).toMatchObject({ cases: 1, files: 0, wrong: [] });
    await store.close();
  },
);

test('256 MiB of a text stream through in less than half as much memory', async () => {
  const { child, link } = await start();
  const MIB = 1024 ** 2;
  const PIECES = 256;
  const MOST_MIB = 128; // measured: about 80, whether 96 MiB or 256 go through; held whole, the body alone would be 256
  const most = (): number => Number(/^VmHWM:\s+(\d+) kB/m.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1]) / 1024; // Linux, proc(5): in KiB
  const id = await newCase(link);
  const before = most();
  const row = '0.500,5.050\n';
  const piece = new TextEncoder().encode(row.repeat(Math.floor(MIB / row.length)));
  let sent = 0;
  const body = new ReadableStream({
    pull(controller) {
      if (sent === PIECES) controller.close();
      else controller.enqueue(piece);
      sent += 1;
    },
  });
  const answer = await fetch(new URL(`/api/cases/${id}/files?name=long.csv`, link), {
    method: 'POST',
    body,
    duplex: 'half',
  } as RequestInit);
  expect(await answer.json()).toMatchObject({ bytes: PIECES * piece.length, media: 'text/plain' });
  expect(most() - before, 'MiB more than before, at most').toBeLessThan(MOST_MIB);
});

test.each(['70000', '-1', 'many', '4810.5'])('the port %s is refused', (port) =>
  refusedWith(['--casebook', scratch.path, `--port=${port}`], /--port/),
);

test('a port that something else listens on is refused, and the casebook is free again', async () => {
  const other = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => other.once('listening', resolve));
  const { port } = other.address() as AddressInfo;
  await refusedWith(['--casebook', scratch.path, '--port', String(port)], /nothing else listens/);
  other.close();
  await (await mustOpen(scratch.path)).close();
});

test('a casebook that is open for writing elsewhere is refused', async () => {
  const store = await mustOpen(scratch.path);
  await refusedWith(['--casebook', scratch.path, '--port', '0'], /nothing else has open/);
  await store.close();
});

test('a casebook of a newer tool is refused, and not a byte of it changes', async () => {
  await (await mustOpen(scratch.path)).close();
  const sqlite = new Database(scratch.path);
  const version = sqlite.pragma('user_version', { simple: true }) as number;
  sqlite.pragma(`user_version = ${version + 1}`);
  sqlite.close();
  const before = readFileSync(scratch.path);
  await refusedWith(['--casebook', scratch.path, '--port', '0'], /newer tool/);
  expect(readFileSync(scratch.path).equals(before)).toBe(true);
});

test('a casebook in a folder that is not there, and no casebook at all, are refused', async () => {
  await refusedWith(['--casebook', join(scratch.folder, 'none', 'x.casebook'), '--port', '0'], /none/);
  await refusedWith([], /--casebook/, 2);
});
