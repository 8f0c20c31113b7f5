import { copyFileSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { buildVersion1 } from '../../scripts/kept/casebook-1.ts';
import { versionOf } from '../../src/store/sqlite/migrate.ts';
import { NEWEST_VERSION } from '../../src/store/sqlite/migration/migrations.ts';
import { mustOpen, scratchFolder } from './scratch-casebook.ts';
import { startChild } from './storm/child.ts';
import { LEAST_EDITS, stormRound } from './storm/storm-round.ts';

const ROUNDS = 5;
const SLOW_CASES = 1500; // enough for a migration that can be hit in the middle
const MIGRATION_KILLS = 6;

let scratch: ReturnType<typeof scratchFolder>;
beforeEach(() => {
  scratch = scratchFolder();
});
afterEach(() => scratch.drop());

describe('killed without a word', () => {
  test('in a storm of edits, the casebook has lost none that was acknowledged, round after round', async () => {
    for (let seed = 1; seed <= ROUNDS; seed += 1) {
      const { acknowledged, lost, check } = await stormRound(scratch.path, seed);
      console.log(`storm ${seed} of ${ROUNDS}: ${acknowledged} acknowledged edits, ${lost.length} lost, ${check.wrong.length} wrong`);
      expect(acknowledged).toBeGreaterThanOrEqual(LEAST_EDITS);
      expect(lost).toEqual([]);
      expect(check.wrong).toEqual([]);
    }
  });

  test('in the middle of an upload, nothing of the file is seen or left', async () => {
    const child = startChild('endless-upload.ts', [scratch.path]);
    await child.said(12);
    await child.kill();
    expect(child.lines.length).toBeGreaterThanOrEqual(12);
    expect(countOf(scratch.path, 'chunks')).toBeGreaterThan(0);
    const store = await mustOpen(scratch.path);
    expect(await store.check()).toMatchObject({ files: 0, bytes: 0, wrong: [] });
    await store.close();
    expect(countOf(scratch.path, 'chunks')).toBe(0);
  });

  test('in the middle of a migration, the casebook is of the old version or of the new one, and whole', async () => {
    buildVersion1(scratch.path, SLOW_CASES);
    copyFileSync(scratch.path, `${scratch.path}.timed`);
    const start = performance.now();
    await (await mustOpen(`${scratch.path}.timed`)).close();
    const wholeMs = performance.now() - start;
    let hit = 0;
    for (let kill = 0; kill < MIGRATION_KILLS; kill += 1) {
      const child = startChild('open-once.ts', [scratch.path]);
      await child.said(1);
      await setTimeout((wholeMs * kill) / MIGRATION_KILLS);
      await child.kill();
      const version = versionIn(scratch.path);
      if (!child.lines.includes('opened') && version === 1) hit += 1;
      expect([1, NEWEST_VERSION]).toContain(version);
      expect(hasTable(scratch.path, 'overview')).toBe(version === NEWEST_VERSION);
    }
    console.log(`killed ${hit} of ${MIGRATION_KILLS} times before the end of a migration of ${Math.round(wholeMs)} ms`);
    expect(hit).toBeGreaterThan(0);
    const store = await mustOpen(scratch.path);
    const { total } = await store.cases.find({ from: 0, count: 1 });
    expect(total).toBe(SLOW_CASES - 2); // one is archived, one removed
    await store.close();
  });
});

function read<T>(path: string, work: (sqlite: Database.Database) => T): T {
  const sqlite = new Database(path, { readonly: true });
  try {
    return work(sqlite);
  } finally {
    sqlite.close();
  }
}
const versionIn = (path: string) => read(path, versionOf);
const countOf = (path: string, table: string) =>
  read(path, (sqlite) => sqlite.prepare<[], { n: number }>(`SELECT count(*) AS n FROM ${table}`).get()?.n);
const hasTable = (path: string, table: string) =>
  read(path, (sqlite) => sqlite.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = ?").get(table) !== undefined);
