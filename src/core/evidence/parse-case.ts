import { distance as editDistance } from 'fastest-levenshtein';
import type { z } from 'zod';
import { isRefusal, type Refusal, refuse } from '../quantity/refusal.ts';
import { CASE_FORMAT, type Case, caseDocument } from './case.ts';
import { brokenReferences } from './references.ts';

type Issue = z.core.$ZodIssue;

/**
 * Reads a case document. Everything wrong with it comes back as refusals, one sentence each, with the place by id
 * ("/exhibits/sweep-1/table/rows/3/cells/1"); nothing is filled in and nothing unknown is dropped.
 */
export function parseCase(json: unknown): Case | Refusal[] {
  const format = typeof json === 'object' && json !== null ? (json as { format?: unknown }).format : undefined;
  if (typeof format === 'string' && format !== CASE_FORMAT && /^mainsworthy-case\/\d+$/.test(format))
    return [refuse('newer-format', format, `${CASE_FORMAT}; this case was written by another version of the tool`, { place: '/format' })];
  const parsed = caseDocument.safeParse(json);
  if (!parsed.success) return parsed.error.issues.flatMap((issue) => refusalsOf(issue, json, []));
  const broken = brokenReferences(parsed.data);
  return broken.length > 0 ? broken : parsed.data;
}

function refusalsOf(issue: Issue, json: unknown, before: readonly PropertyKey[]): Refusal[] {
  const path = [...before, ...issue.path];
  const here = valueAt(json, path);
  const place = placeOf(json, path);
  if (issue.code === 'unrecognized_keys') {
    const known = knownKeys(issue, here);
    return issue.keys.map((key) => {
      const near = known
        .filter((other) => editDistance(key, other) <= Math.max(2, key.length / 3))
        .sort((a, b) => editDistance(key, a) - editDistance(key, b))[0];
      return refuse('unknown-key', key, 'a key of this place', {
        place: `${place}/${key}`,
        ...(near === undefined ? {} : { suggestion: near }),
      });
    });
  }
  if (issue.code === 'invalid_union') {
    const { discriminator } = issue as { discriminator?: unknown };
    if (typeof discriminator === 'string') {
      // the path of such an issue ends in the discriminator itself
      const inside = path.at(-1) === discriminator;
      const got = inside ? here : typeof here === 'object' && here !== null ? (here as Record<string, unknown>)[discriminator] : here;
      return [
        refuse('unknown-kind', show(got), `a ${discriminator} of this place`, { place: inside ? place : `${place}/${discriminator}` }),
      ];
    }
    const branches = issue.errors as Issue[][];
    const words = literalsOf(branches);
    if (words !== null) return [refuse('invalid-value', show(here), `one of ${words.join(', ')}`, { place })];
    const branch = branchThatFits(branches, here);
    if (branch !== null) return branch.flatMap((inner) => refusalsOf(inner, json, path));
    return [refuse('wrong-form', show(here), 'a value, a reading {v}, or one of the states', { place })];
  }
  const own = issue.code === 'custom' ? (issue.params?.['refusal'] as unknown) : undefined;
  if (isRefusal(own)) return [{ ...own, place: place + own.place }];
  return [refuse(issue.code.replaceAll('_', '-'), show(here), expectedText(issue), { place })];
}

function expectedText(issue: Issue): string {
  if (issue.code === 'invalid_type') return issue.expected === 'nonoptional' ? 'a value' : `a ${issue.expected}`;
  if (issue.code === 'invalid_value') return `one of ${issue.values.map(String).join(', ')}`;
  if (issue.code === 'too_big') return `at most ${issue.maximum}`;
  if (issue.code === 'too_small') return `at least ${issue.minimum}`;
  return issue.message.replace(/^expected /, '');
}

/** A union of nothing but single words or numbers: all of them, for one sentence. */
function literalsOf(branches: readonly Issue[][]): string[] | null {
  const words = branches.map((branch) =>
    branch.length === 1 && branch[0]!.code === 'invalid_value' && branch[0]!.path.length === 0 ? branch[0]!.values.map(String) : null,
  );
  return branches.length > 0 && words.every((own) => own !== null) ? words.flat() : null;
}

/** Of a union's branches the one the writer meant: by `state`, by `v`, else the one whose complaint lies deepest. */
function branchThatFits(branches: Issue[][], here: unknown): Issue[] | null {
  if (branches.length === 0) return null;
  const isObject = typeof here === 'object' && here !== null && !Array.isArray(here);
  const fitting = branches.filter((branch) => {
    const typeMissed = branch.some((issue) => issue.path.length === 0 && issue.code === 'invalid_type');
    if (typeMissed) return false;
    if (!isObject) return true;
    if ('state' in here)
      return (
        branch.some((issue) => 'discriminator' in issue) ||
        !branch.some((issue) => issue.code === 'unrecognized_keys' && issue.keys.includes('state'))
      );
    return 'v' in here ? !branch.some((issue) => issue.code === 'unrecognized_keys' && issue.keys.includes('v')) : true;
  });
  const depth = (branch: Issue[]): number => Math.max(...branch.map((issue) => issue.path.length));
  const [best] = [...(fitting.length > 0 ? fitting : [])].sort((a, b) => depth(b) - depth(a) || a.length - b.length);
  if (best === undefined) return null;
  return best;
}

/** Keys that the object could have had: zod does not say, so learn them from the schema's own complaint about an empty object. */
function knownKeys(issue: Issue, here: unknown): string[] {
  const siblings = typeof here === 'object' && here !== null ? Object.keys(here) : [];
  const taken = issue.code === 'unrecognized_keys' ? new Set(issue.keys) : new Set<string>();
  keys ??= collectKeys(caseDocument, new Set(), new Set());
  return [...keys].filter((key) => !taken.has(key) && !siblings.includes(key));
}

/** Every key that occurs in the case schema, for suggestions only. */
let keys: ReadonlySet<string> | undefined;

function collectKeys(schema: z.core.$ZodType, into: Set<string>, seen: Set<unknown>): Set<string> {
  if (seen.has(schema)) return into;
  seen.add(schema);
  const def = schema._zod.def as unknown as Record<string, unknown>;
  const visit = (child: unknown): void => {
    if (typeof child === 'object' && child !== null && '_zod' in child) collectKeys(child as z.core.$ZodType, into, seen);
  };
  const shape = def['shape'];
  if (typeof shape === 'object' && shape !== null)
    for (const [key, child] of Object.entries(shape)) {
      into.add(key);
      visit(child);
    }
  for (const key of ['innerType', 'element', 'valueType', 'in', 'out']) visit(def[key]);
  for (const key of ['options', 'items']) if (Array.isArray(def[key])) (def[key] as unknown[]).forEach(visit);
  return into;
}

function valueAt(json: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined),
    json,
  );
}

/** "/exhibits/sweep-1/table": list items by their id where they have one, else by number counted from 0. */
export function placeOf(json: unknown, path: readonly PropertyKey[]): string {
  let place = '';
  let value: unknown = json;
  for (const key of path) {
    value = typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined;
    const own = typeof key === 'number' && typeof value === 'object' && value !== null ? (value as { id?: unknown }).id : undefined;
    place += `/${typeof own === 'string' ? own : String(key)}`;
  }
  return place;
}

function show(value: unknown): string {
  if (value === undefined) return 'nothing';
  return typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value));
}
