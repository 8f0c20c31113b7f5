import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { mainsworthy } from './run-command.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'mainsworthy-run-'));
  cpSync('examples/fell-12', join(folder, 'fell-12'), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each(['simulate', 'faults'])('%s of a case whose circuit nobody traced ends with one sentence', async (command) => {
  const { code, out, err } = await mainsworthy([command, 'examples/moss-trio']);
  expect(code).toBe(1);
  expect(out).toBe('');
  expect(err.trim().split('\n')).toHaveLength(1);
  expect(err).toContain('parts with pins that share nets');
});

test('a level that the case does not have is refused with those that it has', async () => {
  const { code, err } = await mainsworthy(['simulate', 'examples/tarn-30', '--level', '12v']);
  expect(code).toBe(1);
  expect(err).toContain('5v, 9v, 15v, 20v');
});

test('Ctrl-C ends a run at once, and nothing is kept', async () => {
  const own = join(folder, 'fell-12');
  const before = readdirSync(own);
  const child = spawn(process.execPath, ['dist/cli/main.js', 'faults', own]);
  const ended = new Promise<number | null>((resolve) => child.on('exit', (code) => resolve(code)));
  let said = '';
  await new Promise<void>((resolve) => {
    child.stderr.on('data', (data: Buffer) => {
      said += data.toString();
      if (said.includes('0 %')) resolve();
    });
  });
  const from = performance.now();
  child.kill('SIGINT');
  expect(await ended).toBe(130);
  expect(performance.now() - from).toBeLessThan(1000); // 50 ms on a quiet machine
  expect(said).toContain('nothing was kept');
  expect(readdirSync(own)).toEqual(before);
}, 60_000);
