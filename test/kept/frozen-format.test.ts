import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { CASE_FORMAT } from '../../src/core/evidence/case.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import { narrowings } from './accepts.ts';
import { documentFits, fieldsOf, usedFields } from './fields.ts';
import type { Root, Schema } from './json-schema.ts';

// docs/decisions/0008-format-1-is-frozen.md
const ROOT = 'test/kept';
const CASES = join(ROOT, 'case-1');
const readJson = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));
const now = readJson('schema/case.schema.json') as Root;
/** The schema as it was when a release froze it. Never edited; a release that adds something adds one. */
const frozen = readdirSync(ROOT).filter((name) => /^case-1\..+\.schema\.json$/.test(name));
const documents = readdirSync(CASES).map((name) => readJson(join(CASES, name, 'case.json')));
const schemaOf = (name: string): Root => readJson(join(ROOT, name)) as Root;

describe('what was frozen stays', () => {
  test('there is a frozen schema, and it is of this format', () => {
    expect(frozen.length).toBeGreaterThan(0);
    for (const name of frozen) expect(schemaOf(name)).toMatchObject({ title: CASE_FORMAT });
  });

  test.each(frozen)('what %s takes is taken today, and read as the same kind', (name) => {
    expect(narrowings({ old: schemaOf(name), now })).toEqual([]);
  });

  test.each(frozen)('a kept case fills every field of %s', (name) => {
    const root = schemaOf(name);
    const used = new Set(documents.filter((one) => documentFits(root, one)).flatMap((one) => [...usedFields(root, one)]));
    expect([...fieldsOf(root)].filter((field) => !used.has(field))).toEqual([]);
  });

  test('a kept case is read whole: nothing is dropped, changed or filled in but empty lists', () => {
    for (const document of documents) {
      const parsed = parseCase(document) as unknown as Record<string, unknown>;
      const added = Object.entries(parsed).filter(([key]) => !(key in (document as object)));
      expect(added.every(([, value]) => Array.isArray(value) && value.length === 0)).toBe(true);
      expect(parsed).toEqual({ ...Object.fromEntries(added), ...(document as object) });
    }
  });
});

describe('the comparison of schemas sees', () => {
  const old: Root = {
    $defs: { word: { type: 'string', maxLength: 9 } },
    type: 'object',
    properties: {
      kind: { type: 'string', enum: ['one', 'two'] },
      note: { $ref: '#/$defs/word' },
      volts: { type: 'string', description: 'A voltage, as typed, with its unit.' },
      share: { type: 'number', minimum: 0, maximum: 1 },
      either: {
        anyOf: [
          { type: 'string' },
          { type: 'object', properties: { v: { type: 'string' } }, required: ['v'], additionalProperties: false },
        ],
      },
      pair: { type: 'array', prefixItems: [{ type: 'string' }, { type: 'string' }] },
      rows: { type: 'array', items: { type: 'string' }, default: [] },
      free: { type: 'object', propertyNames: { type: 'string' }, additionalProperties: { type: 'string' } },
    },
    required: ['kind'],
    additionalProperties: false,
  };
  const changed = (
    change: (schema: { properties: Record<string, Schema>; required: string[] } & Record<string, unknown>) => void,
  ): Root => {
    const copy = structuredClone(old) as unknown as Parameters<typeof change>[0];
    change(copy);
    return copy as unknown as Root;
  };
  const found = (change: Parameters<typeof changed>[0]): string[] => narrowings({ old, now: changed(change) });

  it('nothing in what only grows', () => {
    expect(found(() => {})).toEqual([]);
    expect(
      found(({ properties }) => {
        properties['more'] = { type: 'string' };
        properties['kind'] = { type: 'string', enum: ['one', 'two', 'three'] };
        properties['either'] = {
          anyOf: [...(old['properties'] as Record<string, { anyOf: Schema[] }>)['either']!.anyOf, { type: 'number' }],
        };
        properties['note'] = { type: 'string' };
      }),
    ).toEqual([]);
  });

  it.each<[string, Parameters<typeof changed>[0]]>([
    ['/note', ({ properties }) => delete properties['note']],
    ['/note', ({ required }) => required.push('note')],
    ['/note', ({ properties }) => (properties['note'] = { type: 'string', maxLength: 8 })],
    ['/note', ({ properties }) => (properties['note'] = { type: 'string', pattern: '^a' })],
    ['/kind', ({ properties }) => (properties['kind'] = { type: 'string', enum: ['one'] })],
    ['/volts', ({ properties }) => (properties['volts'] = { type: 'string', description: 'A current, as typed, with its unit.' })],
    ['/share', ({ properties }) => (properties['share'] = { type: 'number', minimum: 0.1, maximum: 1 })],
    ['/share', ({ properties }) => (properties['share'] = { type: 'integer', minimum: 0, maximum: 1 })],
    ['/either', ({ properties }) => (properties['either'] = { type: 'string' })],
    ['/pair', ({ properties }) => (properties['pair'] = { type: 'array', prefixItems: [{ type: 'string' }] })],
    ['/rows', ({ properties }) => (properties['rows'] = { type: 'array', items: { type: 'number' }, default: [] })],
    ['/rows', ({ properties }) => (properties['rows'] = { type: 'array', items: { type: 'string' }, default: ['x'] })],
    ['/free', ({ properties }) => (properties['free'] = { type: 'object', properties: {}, additionalProperties: false })],
  ])('a narrower %s', (place, change) => {
    const all = found(change);
    expect(all.length).toBeGreaterThan(0);
    for (const one of all) expect(one).toMatch(new RegExp(`^${place}`));
  });

  it('a keyword that it does not know, and throws', () => {
    expect(() => found(({ properties }) => (properties['note'] = { type: 'string', minLength: 1 }))).toThrow(/minLength/);
  });
});

describe('a field that no kept case fills', () => {
  it('is told: of a form that stands in several places once, of another form with its own name', () => {
    const reading = {
      type: 'object',
      properties: { v: { type: 'string' }, how: { type: 'string' } },
      required: ['v'],
      additionalProperties: false,
    };
    const root = { $defs: {}, type: 'object', properties: { a: reading, b: reading }, additionalProperties: false } as unknown as Root;
    const used = usedFields(root, { a: { v: '1' }, b: { v: '2' } });
    expect([...fieldsOf(root)].filter((field) => !used.has(field))).toEqual(['how v > how']);
    expect(() => usedFields(root, { c: 1 })).toThrow(/fits nothing/);
    expect(documentFits(root, { c: 1 })).toBe(false);
  });
});
