import { existsSync } from 'node:fs';
import { cp, mkdtemp, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { mustOpen } from '../store/scratch-casebook.ts';
import { mainsworthy } from './run-command.ts';

let folder = '';
let book = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'mainsworthy-cli-'));
  book = join(folder, 'market.casebook');
  for (const name of ['fell-12', 'beck-5']) await mustRun(['import', `examples/${name}`, '--casebook', book]);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function mustRun(args: readonly string[]): Promise<string> {
  const { code, out, err } = await mainsworthy(args);
  expect(err).toBe('');
  expect(code).toBe(0);
  return out;
}
const at = (name: string) => join(folder, name);

describe('a case of a casebook', () => {
  test('is judged as its folder is, to the byte', async () => {
    expect(await mustRun(['assess', 'fell-12', '--casebook', book, '--json'])).toBe(
      await mustRun(['assess', 'examples/fell-12', '--json']),
    );
  });
  test('is explained and reported as its folder is', async () => {
    expect(await mustRun(['explain', 'fell-12', 'shock/creepage', '--casebook', book])).toBe(
      await mustRun(['explain', 'examples/fell-12', 'shock/creepage']),
    );
    await mustRun(['report', 'fell-12', '--casebook', book, '-o', at('book.html')]);
    await mustRun(['report', 'examples/fell-12', '-o', at('folder.html')]);
    expect(await readFile(at('book.html'), 'utf8')).toBe(await readFile(at('folder.html'), 'utf8'));
  });
  test('has its soak followed to its end, as its folder has, and keeps it as a step that can be undone', async () => {
    await cp('examples/fell-12', at('fell'), { recursive: true });
    const inFolder = await mustRun(['foresee', at('fell'), 'soak-1']);
    const inBook = await mustRun(['foresee', 'fell-12', 'soak-1', '--casebook', book]);
    const told = (text: string): string[] => text.split('\n').filter((line) => line.includes('heading for'));
    expect(told(inBook)).toEqual(told(inFolder));
    expect(inBook).toContain('kept in fell-12, at revision 2');
    const store = await mustOpen(book, { access: 'read' });
    const [last] = (await store.cases.revisions('fell-12', 2)).slice(-1);
    await store.close();
    expect(last).toMatchObject({ by: 'foresee', name: { key: 'foresee' } });
  });
  test('of another name, or another soak, is refused', async () => {
    expect((await mainsworthy(['foresee', 'nobody', 'soak-1', '--casebook', book])).err).toContain('a case of this casebook');
    expect((await mainsworthy(['foresee', 'fell-12', 'soak-9', '--casebook', book])).err).toContain('one of soak-1');
  });
  test('moves to another casebook as an archive, and out again as the folder it was', async () => {
    expect(await mustRun(['pack', 'beck-5', '--casebook', book, '-o', at('beck.zip')])).toContain('packed into');
    expect(await mustRun(['unpack', at('beck.zip'), '--casebook', at('other.casebook')])).toContain('with 1 revisions');
    await mustRun(['export', 'beck-5', '--casebook', at('other.casebook'), '-o', at('beck')]);
    expect(await readFile(at('beck/case.json'), 'utf8')).toBe(await readFile('examples/beck-5/case.json', 'utf8'));
    expect(await mustRun(['assess', at('beck')])).toContain('Dangerous');
  });
});

describe('a casebook', () => {
  test('is checked and copied while something else has it open for writing', async () => {
    const store = await mustOpen(book);
    try {
      expect(await mustRun(['check', book])).toMatch(/^2 cases with 3 revisions, \d+ files with \d+ bytes: 0 wrong/);
      await mustRun(['backup', book, '-o', at('copy.casebook')]);
      expect(await mustRun(['assess', 'beck-5', '--casebook', book])).toContain('Dangerous');
    } finally {
      await store.close();
    }
    expect(await mustRun(['check', at('copy.casebook')])).toContain('2 cases');
  });
  test('with a changed file in it fails the check, by the hash of the file', async () => {
    await mustRun(['backup', book, '-o', at('changed.casebook')]);
    const sqlite = new Database(at('changed.casebook'));
    sqlite.exec("UPDATE chunks SET body = CAST('changed' AS BLOB) WHERE file_n = 1");
    const { sha256 } = sqlite.prepare<[], { sha256: string }>('SELECT sha256 FROM files WHERE n = 1').get()!;
    sqlite.close();
    const { code, out, err } = await mainsworthy(['check', at('changed.casebook')]);
    expect(code).toBe(1);
    expect(out).toContain('1 wrong');
    expect(err).toContain(sha256);
  });
});

describe('what cannot be done with a casebook is one sentence, and exit code 1', () => {
  beforeAll(async () => {
    await writeFile(at('list.casebook'), 'a shopping list\n'.repeat(100));
    await mustRun(['pack', 'fell-12', '--casebook', book, '-o', at('whole.zip')]);
    await cp(at('whole.zip'), at('cut.zip'));
    await truncate(at('cut.zip'), 20_000);
    const bytes = await readFile(at('whole.zip'));
    bytes[12_000] = bytes[12_000]! ^ 1;
    await writeFile(at('changed.zip'), bytes);
    await cp(book, at('newer.casebook'));
    const newer = new Database(at('newer.casebook'));
    newer.pragma('user_version = 900');
    newer.close();
  });
  test.each([
    ['a casebook that is not there', () => ['check', at('none.casebook')], /none\.casebook.*a casebook that is there/],
    ['a file that is no casebook', () => ['check', at('list.casebook')], /list\.casebook.*a casebook of this tool/],
    ['a casebook of a newer version', () => ['check', at('newer.casebook')], /version 900.*a newer tool/],
    ['an id that the casebook does not have', () => ['assess', 'moss', '--casebook', book], /got "moss", expected a case of this casebook/],
    ['a case to pack that is not there', () => ['pack', 'moss', '--casebook', book, '-o', at('m.zip')], /got "moss"/],
    ['a case that is there already', () => ['import', 'examples/fell-12', '--casebook', book], /\/id: got "fell-12"/],
    ['an archive of a case that is there already', () => ['unpack', at('whole.zip'), '--casebook', book], /got "fell-12"/],
    ['an archive that is not there', () => ['unpack', at('none.zip'), '--casebook', book], /none\.zip.*an archive that is there/],
    ['an archive that was cut short', () => ['unpack', at('cut.zip'), '--casebook', at('new.casebook')], /cut\.zip.*a whole zip archive/],
    [
      'an archive with a changed byte',
      () => ['unpack', at('changed.zip'), '--casebook', at('new.casebook')],
      /changed\.zip.*that were packed/,
    ],
    ['a copy onto a file', () => ['backup', book, '-o', at('list.casebook')], /a name that no file has yet/],
    ['an archive onto a file', () => ['pack', 'fell-12', '--casebook', book, '-o', at('whole.zip')], /a name that no file has yet/],
    ['a place without a folder', () => ['pack', 'fell-12', '--casebook', book, '-o', at('no/f.zip')], /a place that can be written to/],
    ['a folder with a case in it', () => ['export', 'fell-12', '--casebook', book, '-o', 'examples/fell-12'], /a folder without this file/],
  ] as const)('%s', async (_what, args, expected) => {
    const { code, out, err } = await mainsworthy(args());
    expect(err).toMatch(expected);
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err.trim().split('\n')).toHaveLength(1);
  });
  test('an archive that is refused makes no casebook', async () => {
    const { code } = await mainsworthy(['unpack', at('changed.zip'), '--casebook', at('unmade.casebook')]);
    expect(code).toBe(1);
    expect(existsSync(at('unmade.casebook'))).toBe(false);
  });
  test('a casebook that something else writes to', async () => {
    const store = await mustOpen(book);
    const { code, err } = await mainsworthy(['import', 'examples/tarn-30', '--casebook', book]);
    await store.close();
    expect(code).toBe(1);
    expect(err).toMatch(/nothing else has open for writing/);
  });
});
