import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/assess/assess.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import type { Assessment } from '../../src/core/result/assessment.ts';

// Takes a case with every kind of evidence and forgets one thing at a time. What did not pass before must not pass for the forgetting.
type Path = readonly (string | number)[];
const UNKNOWN = { state: 'unknown', because: 'nobody could tell' };
const CASES = ['beck-5', 'fell-12', 'moss-trio', 'tarn-30'] as const;

function load(name: string): Record<string, unknown> {
  return JSON.parse(readFileSync(new URL(`../../examples/${name}/case.json`, import.meta.url), 'utf8')) as Record<string, unknown>;
}

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inside = Object.entries(value).flatMap(([key, item]) => pathsOf(item, [...path, Array.isArray(value) ? Number(key) : key]));
  return path.length === 0 ? inside : [path, ...inside];
}

function withAt(json: unknown, [key, ...rest]: Path, put: unknown): unknown {
  if (key === undefined) return put;
  if (Array.isArray(json)) return json.map((item, index) => (index === key ? withAt(item, rest, put) : item));
  return { ...(json as Record<string, unknown>), [key]: withAt((json as Record<string, unknown>)[key], rest, put) };
}

function judged(json: unknown): Assessment | null {
  const parsed = parseCase(json);
  return Array.isArray(parsed) ? null : assess(parsed, new Map());
}

/** Findings that pass and did not before: "finding after forgetting /path". */
function gained(before: Assessment, after: Assessment, path: Path): string[] {
  const passed = new Set(before.findings.filter(({ outcome }) => outcome === 'pass').map(({ id }) => id));
  return after.findings
    .filter(({ id, outcome }) => outcome === 'pass' && !passed.has(id))
    .map(({ id }) => `${id} after forgetting /${path.join('/')}`);
}

describe.each(CASES)('%s with one value forgotten', (name) => {
  const json = load(name);
  const before = judged(json);
  if (before === null) throw new Error(`${name} is refused`);
  // the label chooses the mains, and a case that forgot it is judged at the mains of its market by default
  const chooses = (path: Path): boolean => path.includes('input') && path.includes('voltage');
  const forgotten = pathsOf(json)
    .filter((path) => !chooses(path))
    .flatMap((path) => {
      const after = judged(withAt(json, path, UNKNOWN));
      return after === null ? [] : [{ path, after }];
    });

  it('can be forgotten in more than a few places', () => {
    expect(forgotten.length).toBeGreaterThan(15);
  });

  it('passes nothing that did not pass before', () => {
    expect(forgotten.flatMap(({ path, after }) => gained(before, after, path))).toEqual([]);
  });

  it('no finding passes on a field that nobody could tell', () => {
    const wrong = forgotten.flatMap(({ path, after }) => {
      const json_ = `/${path.join('/')}`;
      const field = fieldOf(json, path);
      return after.findings
        .filter(({ outcome, fields }) => outcome === 'pass' && fields.includes(field))
        .map(({ id }) => `${id} on ${json_}`);
    });
    expect(wrong).toEqual([]);
  });

  it('costs a pass somewhere: what passes hangs on what was written down', () => {
    const lost = forgotten.flatMap(({ path, after }) => gained(after, before, path));
    expect(lost.length).toBeGreaterThan(0);
  });
});

/** The place of a path as findings name it: list items by their id. */
function fieldOf(json: unknown, path: Path): string {
  let here: unknown = json;
  let place = '';
  for (const key of path) {
    here = (here as Record<string | number, unknown>)[key];
    const id = typeof key === 'number' && typeof here === 'object' && here !== null ? (here as { id?: unknown }).id : undefined;
    place += `/${typeof id === 'string' ? id : key}`;
  }
  return place;
}
