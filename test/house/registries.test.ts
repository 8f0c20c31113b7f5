import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { exampleFiles } from '../../scripts/examples.ts';
import { outdatedRegistries } from '../../scripts/registries.ts';
import { schemaFiles } from '../../scripts/schemas.ts';
import { BENCH_SET } from '../../src/core/check/bench-set.ts';
import { CHECKS } from '../../src/core/check/registry.ts';
import { FORMULAS } from '../../src/core/formula/registry.ts';
import { TABLES } from '../../src/core/table/registry.ts';
import { filesBelow } from './read-tree.ts';

function idsByPath(room: string): string[] {
  return filesBelow(room, ['.ts'])
    .map(({ path }) => relative(room, path).replace(/\.ts$/, ''))
    .filter((path) => path.includes('/'))
    .sort();
}

describe('generated files', () => {
  test('registries list exactly the files that are there', () => expect(outdatedRegistries()).toEqual([]));
  test('JSON schemas equal the schemas in code', () => {
    for (const [path, text] of schemaFiles()) expect(readFileSync(path, 'utf8') === text, `${path}: run npm run schema`).toBe(true);
  });
  test('demo cases equal what their models say', () => {
    for (const [path, bytes] of exampleFiles()) expect(Buffer.compare(readFileSync(path), bytes), `${path}: run npm run examples`).toBe(0);
  });
});

describe('an id is the path of its file', () => {
  test('formulas', () => expect(FORMULAS.map(({ id }) => id).sort()).toEqual(idsByPath('src/core/formula')));
  test('tables', () => expect(TABLES.map(({ id }) => id).sort()).toEqual(idsByPath('src/core/table')));
  test('checks', () => expect(CHECKS.map(({ id }) => id).sort()).toEqual(idsByPath('src/core/check')));
});

describe('the bench set', () => {
  test('names every check once', () => expect(new Set(BENCH_SET.map(({ id }) => id)).size).toBe(BENCH_SET.length));
  test('holds every check that is written', () => {
    const ids = new Set(BENCH_SET.map(({ id }) => id));
    expect(CHECKS.filter(({ id }) => !ids.has(id)).map(({ id }) => id)).toEqual([]);
  });
  test('gives a written check the consequence the bench set declares, or a milder one by finding', () => {
    for (const check of CHECKS) expect(check.consequence, check.id).toBe(BENCH_SET.find(({ id }) => id === check.id)?.worst);
  });
});
