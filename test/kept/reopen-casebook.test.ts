import { copyFileSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { assessCase } from '../../src/app/assess-case.ts';
import { casebookCaseSource } from '../../src/app/casebook/casebook-case-source.ts';
import { stateAt } from '../../src/app/casebook/state-at.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { versionOf } from '../../src/store/sqlite/migrate.ts';
import { MIGRATIONS, NEWEST_VERSION } from '../../src/store/sqlite/migration/migrations.ts';
import { openCasebook } from '../../src/store/sqlite/open-casebook.ts';

const ROOT = 'test/kept';
const folderOf = (version: number) => join(ROOT, `casebook-${version}`);
const keptOf = (version: number) =>
  existsSync(folderOf(version)) ? readdirSync(folderOf(version)).map((name) => join(folderOf(version), name)) : [];
const OLDER = MIGRATIONS.map(({ version }) => version).filter((version) => version < NEWEST_VERSION);

let scratch = '';
beforeAll(() => {
  scratch = mkdtempSync(join(tmpdir(), 'mainsworthy-kept-'));
});
afterAll(() => rmSync(scratch, { recursive: true }));

/** A casebook of every version before the newest. They are never edited; a migration that none of them goes through is not tested. */
describe('a casebook that was saved once reopens for ever', () => {
  test('migrations count from 1 without a gap', () =>
    expect(MIGRATIONS.map(({ version }) => version)).toEqual(MIGRATIONS.map((_, index) => index + 1)));

  test.each(OLDER)('every migration is exercised: a casebook of version %i is kept', (version) => {
    const kept = keptOf(version);
    expect(kept.length).toBeGreaterThan(0);
    for (const path of kept) {
      const copy = copyOf(path);
      const sqlite = new Database(copy, { readonly: true });
      expect(versionOf(sqlite)).toBe(version);
      sqlite.close();
    }
  });

  test.each(OLDER.flatMap(keptOf))('%s comes up to the newest version with everything it held', async (path) => {
    const copy = copyOf(path);
    const store = await openCasebook(copy, { access: 'write' });
    if (isRefusal(store)) throw new Error(sentence(store));
    const check = await store.check();
    expect(check).toMatchObject({ cases: 4, revisions: 5, files: 5, wrong: [] });
    const page = await store.cases.find({ from: 0, count: 10, sort: 'verdict', search: 'fell' });
    expect(page.rows.map(({ head }) => head.id)).toEqual(['fell-12-3', 'fell-12-4']);
    expect(page.counts).toMatchObject({ failure: { Dangerous: 1, Unsafe: 1 }, hazard: { shock: 2 }, claim: { '12 V 2 A': 2 } });
    const found = await stateAt(store, 'fell-12-4');
    expect(found?.state.case['sample']).toBe('S4');
    expect(await store.cases.assessments('fell-12-4')).toHaveLength(1);
    expect(await store.cases.readScreen('fell-12-4')).toEqual({ open: 'load' });
    const judged = await assessCase(casebookCaseSource(found!.state, store.files));
    expect(Array.isArray(judged)).toBe(false);
    await store.close();
  });

  test.each(OLDER.flatMap(keptOf))('%s is not changed by somebody who only reads', async (path) => {
    const copy = copyOf(path);
    expect(await openCasebook(copy, { access: 'read' })).toMatchObject({ code: 'casebook-older' });
    const sqlite = new Database(copy, { readonly: true });
    expect(versionOf(sqlite)).toBeLessThan(NEWEST_VERSION);
    sqlite.close();
  });
});

function copyOf(path: string): string {
  const copy = join(mkdtempSync(join(scratch, 'copy-')), 'copy.casebook');
  copyFileSync(path, copy);
  return copy;
}
