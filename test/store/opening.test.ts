import { chmodSync, copyFileSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { CasebookRefused } from '../../src/app/casebook/casebook-refused.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { NEWEST_VERSION } from '../../src/store/sqlite/migration/migrations.ts';
import { type OpenOptions, openCasebook } from '../../src/store/sqlite/open-casebook.ts';
import { DAWN, edit, emptyState, firstOf, minute, summaryOf } from './example-case.ts';
import { mustOpen, scratchFolder } from './scratch-casebook.ts';
import { startChild } from './storm/child.ts';

let scratch: ReturnType<typeof scratchFolder>;
beforeEach(() => {
  scratch = scratchFolder();
});
afterEach(() => scratch.drop());

async function refusalOf(path: string, options: OpenOptions = { access: 'write' }) {
  const store = await openCasebook(path, options);
  if (!isRefusal(store)) {
    await store.close();
    throw new Error(`${path} opened`);
  }
  expect(sentence(store)).toContain(path);
  return store.code;
}
async function oneCase(path: string): Promise<void> {
  const store = await mustOpen(path);
  await store.cases.create('cube', firstOf(emptyState('cube')));
  await store.close();
}

describe('what is no casebook for this tool is refused in one sentence and left as it is', () => {
  test('nothing there', async () => expect(await refusalOf(scratch.path)).toBe('casebook-missing'));
  test('a folder that is not there', async () =>
    expect(await refusalOf(join(scratch.folder, 'no', 'book'), { access: 'write', make: true })).toBe('casebook-unreadable'));
  test.each(['read', 'write'] as const)('a text file, opened to %s', async (access) => {
    writeFileSync(scratch.path, 'a shopping list\n'.repeat(100));
    expect(await refusalOf(scratch.path, { access, make: true })).toBe('not-a-casebook');
    expect(readFileSync(scratch.path, 'utf8')).toBe('a shopping list\n'.repeat(100));
  });
  test.each(['read', 'write'] as const)('a database of another program, opened to %s', async (access) => {
    const other = new Database(scratch.path);
    other.exec('CREATE TABLE cases (id TEXT)');
    other.close();
    const before = readFileSync(scratch.path);
    expect(await refusalOf(scratch.path, { access })).toBe('not-a-casebook');
    expect(readFileSync(scratch.path)).toEqual(before);
  });
  test('an empty file is no casebook to a reader, and becomes one to a writer', async () => {
    writeFileSync(scratch.path, '');
    expect(await refusalOf(scratch.path, { access: 'read' })).toBe('not-a-casebook');
    await oneCase(scratch.path);
    expect(statSync(scratch.path).size).toBeGreaterThan(0);
  });
  test('what is left when the very first opening was killed becomes a casebook', async () => {
    const begun = new Database(scratch.path);
    begun.pragma('journal_mode = WAL');
    begun.close();
    expect(statSync(scratch.path).size).toBeGreaterThan(0);
    expect(await refusalOf(scratch.path, { access: 'read' })).toBe('not-a-casebook');
    await oneCase(scratch.path);
  });
  test.each(['read', 'write'] as const)('a casebook of a newer version, opened to %s', async (access) => {
    await oneCase(scratch.path);
    const newer = new Database(scratch.path);
    newer.pragma(`user_version = ${NEWEST_VERSION + 1}`);
    newer.close();
    const before = readFileSync(scratch.path);
    expect(await refusalOf(scratch.path, { access })).toBe('casebook-newer');
    expect(readFileSync(scratch.path)).toEqual(before);
  });
  test('a casebook marked read-only can be read and not written', async () => {
    await oneCase(scratch.path);
    chmodSync(scratch.path, 0o444);
    expect(await refusalOf(scratch.path)).toBe('casebook-read-only');
    const store = await mustOpen(scratch.path, { access: 'read' });
    expect(await store.cases.head('cube')).toMatchObject({ revision: 1 });
    await expect(store.cases.writeSummary('cube', summaryOf())).rejects.toThrow(CasebookRefused);
    expect(await store.cases.append('cube', 1, edit(emptyState('cube'), []).written)).toMatchObject({ code: 'casebook-read-only' });
    await store.close();
  });
  test('a casebook whose end is cut off is damaged, not empty', async () => {
    await oneCase(scratch.path);
    truncateSync(scratch.path, statSync(scratch.path).size - 3 * 4096);
    const store = await openCasebook(scratch.path, { access: 'read' });
    if (isRefusal(store)) expect(store.code).toBe('casebook-damaged');
    else {
      await expect(
        store.check().then(({ wrong }) => Promise.reject(wrong[0] === undefined ? new Error('sound') : new CasebookRefused(wrong[0]))),
      ).rejects.toThrow(CasebookRefused);
      await store.close();
    }
  });
});

describe('one writer at a time', () => {
  test('a second process that would write is refused; one that reads is not; a killed one holds nothing', async () => {
    await oneCase(scratch.path);
    const holder = startChild('hold.ts', [scratch.path]);
    await holder.said(1);
    expect(await refusalOf(scratch.path)).toBe('casebook-in-use');
    const reader = await mustOpen(scratch.path, { access: 'read' });
    expect(await reader.cases.head('cube')).toMatchObject({ revision: 1 });
    await reader.close();
    await holder.kill();
    const writer = await mustOpen(scratch.path);
    expect(await writer.cases.append('cube', 1, edit(emptyState('cube'), []).written)).toMatchObject({ revision: 2 });
    await writer.close();
  });
  test('the same process is held to it too, until it closes', async () => {
    const first = await mustOpen(scratch.path);
    expect(await refusalOf(scratch.path)).toBe('casebook-in-use');
    await first.close();
    await (await mustOpen(scratch.path)).close();
  });
});

describe('a full disk', () => {
  const PAGES = 120;
  test('refuses an edit in one sentence, keeps every edit before it, and takes it when there is room', async () => {
    const full = await mustOpen(scratch.path, { access: 'write', make: true, mostPages: PAGES });
    let state = emptyState('cube');
    await full.cases.create('cube', firstOf(state));
    let revision = 1;
    let refusal: unknown = null;
    while (refusal === null) {
      const text = `${revision}`.padEnd(5000, '.');
      const next = edit(state, [{ at: '/case/sample', was: state.case['sample'], to: text }], minute(revision));
      const saved = await full.cases.append('cube', revision, next.written, next.state);
      if (isRefusal(saved)) refusal = saved;
      else {
        revision += 1;
        state = next.state;
      }
    }
    expect(refusal).toMatchObject({ code: 'disk-full', got: scratch.path });
    expect(revision).toBeGreaterThan(5);
    await expect(full.cases.writeScreen('cube', 'big', 'x'.repeat(100_000))).rejects.toMatchObject({ refusal: { code: 'disk-full' } });
    expect(await full.cases.head('cube')).toMatchObject({ revision });
    await full.close();
    const roomy = await mustOpen(scratch.path);
    expect((await roomy.check()).wrong).toEqual([]);
    const next = edit(state, [{ at: '/case/sample', was: state.case['sample'], to: 'B' }]);
    expect(await roomy.cases.append('cube', revision, next.written)).toMatchObject({ revision: revision + 1 });
    await roomy.close();
  });
  test('refuses an upload and leaves nothing of it', async () => {
    const store = await mustOpen(scratch.path, { access: 'write', make: true, mostPages: PAGES });
    const upload = await store.files.begin(DAWN);
    await expect(upload.write(new Uint8Array(2 * 1024 * 1024))).rejects.toMatchObject({ refusal: { code: 'disk-full' } });
    await upload.abort();
    expect(await store.check()).toMatchObject({ files: 0, wrong: [] });
    expect(await store.cases.create('cube', firstOf(emptyState('cube')))).toMatchObject({ revision: 1 });
    await store.close();
  });
  test('refuses a migration and leaves the old casebook', async () => {
    copyFileSync('test/kept/casebook-1/first-version.casebook', scratch.path);
    const pages = statSync(scratch.path).size / 4096;
    expect(await refusalOf(scratch.path, { access: 'write', mostPages: pages + 1 })).toBe('disk-full');
    await (await mustOpen(scratch.path)).close();
  });
});
