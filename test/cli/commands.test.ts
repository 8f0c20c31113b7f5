import { cp, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { assessment as assessmentSchema } from '../../src/core/result/assessment.ts';
import { mainsworthy } from './run-command.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'mainsworthy-cli-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function editedCase(name: string, edit: (json: Record<string, unknown>) => void): Promise<string> {
  const path = join(folder, name);
  await cp('examples/fell-12', path, { recursive: true });
  const json = JSON.parse(await readFile(join(path, 'case.json'), 'utf8')) as Record<string, unknown>;
  edit(json);
  await writeFile(join(path, 'case.json'), JSON.stringify(json));
  return path;
}

describe('assess', () => {
  test('prints both words of the verdict and what decided it, and ends well for a dangerous unit', async () => {
    const { code, out, err } = await mainsworthy(['assess', 'examples/beck-5']);
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toContain('Dangerous');
    expect(out).toContain('Partly examined');
    expect(out).toContain('INVENTED');
    expect(out).toContain('Cannot be judged without a laboratory');
  });
  test('--json prints the Assessment and nothing else', async () => {
    const { code, out, err } = await mainsworthy(['assess', 'examples/fell-12', '--json']);
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(assessmentSchema.safeParse(JSON.parse(out)).error).toBeUndefined();
  });
  test('gives the same bytes twice', async () => {
    const [one, two] = await Promise.all([
      mainsworthy(['assess', 'examples/fell-12', '--json']),
      mainsworthy(['assess', 'examples/fell-12/case.json', '--json']),
    ]);
    expect(one.out).toBe(two.out);
  });
  test('writes no colour codes when NO_COLOR is set or nobody watches', async () => {
    const { out } = await mainsworthy(['assess', 'examples/fell-12'], { NO_COLOR: '1', FORCE_COLOR: '1' });
    expect(out).not.toContain('\u001b[');
  });
  test('works on a case folder that a person made', async () => {
    const path = join(folder, 'my-cube');
    expect((await mainsworthy(['new', path])).code).toBe(0);
    const { code, out } = await mainsworthy(['assess', path]);
    expect(code).toBe(0);
    expect(out).toContain('No verdict yet');
    expect(out).toContain('Not examined');
  });
});

describe('bad input is one sentence with its place, and exit code 1', () => {
  test.each([
    ['a folder without a case', async () => folder, /case\.json.*expected a folder with a case\.json/],
    [
      'a misspelt key',
      () => editedCase('misspelt', (json) => renameKey(json, 'examinedBy', 'examinedby')),
      /\/examinedby: got "examinedby".*did you mean "examinedBy"/,
    ],
    [
      'a length in volts',
      () => editedCase('volts', (json) => setDistance(json, '3.1 V')),
      /\/exhibits\/gap-board\/value: got "3\.1 V", expected a length/,
    ],
    [
      'a unit that does not exist',
      () => editedCase('no-unit', (json) => setDistance(json, '3.1 furlong')),
      /gap-board\/value: got "3\.1 furlong"/,
    ],
    [
      'a file that is missing',
      () => editedCase('missing', (json) => setFile(json, { path: 'gone.csv' })),
      /\/files\/sweep-file-230.*gone\.csv/,
    ],
    [
      'a file outside the folder',
      () => editedCase('outside', (json) => setFile(json, { path: '../load-sweep-230.csv' })),
      /\/files\/sweep-file-230\/path.*inside the case folder/,
    ],
    [
      'a file that changed since it was recorded',
      () => editedCase('changed', (json) => setFile(json, { sha256: '0'.repeat(64) })),
      /\/files\/sweep-file-230.*as it was recorded/,
    ],
    [
      'a case of a newer version',
      () => editedCase('newer', (json) => Object.assign(json, { format: 'mainsworthy-case/9' })),
      /\/format.*another version/,
    ],
  ] as const)('%s', async (_what, make, expected) => {
    const { code, out, err } = await mainsworthy(['assess', await make()]);
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(expected);
    expect(err).not.toMatch(/\n\s+at /);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
  test('text that is no JSON names its line', async () => {
    const path = await editedCase('not-json', () => {});
    await writeFile(join(path, 'case.json'), '{\n "format": "mainsworthy-case/1",\n "id": oops\n}');
    const { code, err } = await mainsworthy(['assess', path]);
    expect(code).toBe(1);
    expect(err).toMatch(/case\.json line 3/);
  });
  test('a link that leads out of the folder is refused', async () => {
    const path = await editedCase('linked', (json) => setFile(json, { path: 'link.csv' }));
    await symlink(join(process.cwd(), 'package.json'), join(path, 'link.csv'));
    const { code, err } = await mainsworthy(['assess', path]);
    expect(code).toBe(1);
    expect(err).toMatch(/inside the case folder/);
  });
});

function renameKey(json: Record<string, unknown>, from: string, to: string): void {
  json[to] = json[from];
  delete json[from];
}

function setDistance(json: Record<string, unknown>, value: string): void {
  const exhibit = (json['exhibits'] as Record<string, unknown>[]).find(({ id }) => id === 'gap-board');
  Object.assign(exhibit!, { value });
}

function setFile(json: Record<string, unknown>, change: Record<string, unknown>): void {
  const file = (json['files'] as Record<string, unknown>[]).find(({ id }) => id === 'sweep-file-230');
  Object.assign(file!, change);
}

describe('explain', () => {
  test('follows a check down to the readings, with source, grade and budget', async () => {
    const { code, out } = await mainsworthy(['explain', 'examples/fell-12', 'shock/creepage']);
    expect(code).toBe(0);
    expect(out).toContain('/exhibits/gap-board/value');
    expect(out).toContain('IEC 62368-1');
    expect(out).toMatch(/secondary/);
    expect(out).toMatch(/%/);
  });
  test('follows a single step', async () => {
    const { code, out } = await mainsworthy(['explain', 'examples/fell-12', 'load/sweep-230/held-current']);
    expect(code).toBe(0);
    expect(out).toContain('I_h');
    expect(out).toContain('/exhibits/sweep-230/table/columns/');
  });
  test('answers an unknown step with the nearest one', async () => {
    const { code, err } = await mainsworthy(['explain', 'examples/fell-12', 'load/sweep-230/held-curent']);
    expect(code).toBe(1);
    expect(err).toContain('did you mean "load/sweep-230/held-current"');
  });
});

describe('report', () => {
  test('writes one HTML file without scripts', async () => {
    const file = join(folder, 'fell.html');
    const { code } = await mainsworthy(['report', 'examples/fell-12', '-o', file]);
    expect(code).toBe(0);
    const html = await readFile(file, 'utf8');
    expect(html).toContain('<!doctype html>');
    expect(html).not.toMatch(/<script/i);
  });
  test('says where it cannot write', async () => {
    const { code, err } = await mainsworthy(['report', 'examples/fell-12', '-o', join(folder, 'no', 'such', 'fell.html')]);
    expect(code).toBe(1);
    expect(err).toMatch(/expected a place that can be written to/);
  });
});

describe('the command itself', () => {
  test('ends with 2 on wrong usage', async () => expect((await mainsworthy(['assess'])).code).toBe(2));
  test('ends with 2 on an unknown command', async () => expect((await mainsworthy(['certify'])).code).toBe(2));
  test('never overwrites a case', async () => {
    const path = join(folder, 'twice');
    expect((await mainsworthy(['new', path])).code).toBe(0);
    const { code, err } = await mainsworthy(['new', path]);
    expect(code).toBe(1);
    expect(err).toMatch(/expected a folder without a case/);
  });
  test('runs the demo and writes four reports', async () => {
    const { code, out } = await mainsworthy(['demo', '--once', '-o', join(folder, 'demo')]);
    expect(code).toBe(0);
    for (const word of ['Nothing found wrong', 'Unsafe', 'Dangerous', 'Below its claims']) expect(out).toContain(word);
    for (const name of ['beck-5', 'fell-12', 'moss-trio', 'tarn-30'])
      expect((await readFile(join(folder, 'demo', `${name}.html`), 'utf8')).length).toBeGreaterThan(10_000);
  });
});
