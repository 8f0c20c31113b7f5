import { describe, expect, test } from 'vitest';
import { filesBelow } from './read-tree.ts';

const LONGEST = 400; // lines; past it, stop and think
/** Files that are longer, each with its reason. Table data and generated files need none. */
const OUTLIERS: Readonly<Record<string, string>> = {
  'test/importer/layout-grammar.ts': 'one grammar of file layouts: its rules name each other and read best on one page',
  'test/importer/layouts.test.ts': 'kept layouts with what they hold: data',
};
const EXEMPT = [/\/table\//, /registry\.ts$/, /\/fonts\//, /\/words\//, /\/second-copy-[^/]*$/];

describe('a file', () => {
  const files = [...filesBelow('src', ['.ts']), ...filesBelow('scripts', ['.ts', '.mjs']), ...filesBelow('test', ['.ts'])].filter(
    ({ path }) => !EXEMPT.some((pattern) => pattern.test(path)),
  );
  test('is not longer than 400 lines without a reason', () => {
    const long = files
      .filter(({ path, text }) => text.split('\n').length > LONGEST && OUTLIERS[path] === undefined)
      .map(({ path }) => path);
    expect(long).toEqual([]);
  });
  test('is not excused when it is short', () => {
    const excused = Object.keys(OUTLIERS).filter(
      (path) => (files.find((file) => file.path === path)?.text.split('\n').length ?? 0) <= LONGEST,
    );
    expect(excused).toEqual([]);
  });
  test('is not named after a heap', () => {
    const heaps = files.filter(({ path }) => /(^|\/)(utils?|common|helpers?|misc|manager)[./-]/.test(path)).map(({ path }) => path);
    expect(heaps).toEqual([]);
  });
});
