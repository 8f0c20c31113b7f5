import { z } from 'zod';
import type { Refusal } from '../quantity/refusal.ts';
import { type Case, caseDocument } from './case.ts';
import { parseCase } from './parse-case.ts';
import { brokenReferences, type Walked, walk } from './references.ts';
import { shareSame } from './share-same.ts';

/** A case document as a case, or everything that is wrong with it. */
export type CaseParser = (json: unknown) => Case | Refusal[];

/**
 * `parseCase` that remembers: parts of a document that are the same object as before are not read again, and what says the same as before comes
 * out as the same object.
 * Documents must not be changed in place. Whatever is refused is read again as a whole, so that the sentences are those of `parseCase`.
 */
export function createCaseParser(): CaseParser {
  const read = createReader();
  const walked = new WeakMap<object, { place: string; found: Walked }>();
  const walkInto = (part: object, place: string, depth: number): Walked => {
    const known = walked.get(part);
    if (known?.place === place) return known.found;
    const found = walk(part, place, depth);
    walked.set(part, { place, found });
    return found;
  };
  return (json) => {
    const one = readParts(json, read);
    return one === null || brokenReferences(one, walkInto).length > 0 ? parseCase(json) : one;
  };
}

/** One part of a document against its schema: what it is read as, or null where it is refused. */
type Read = (schema: z.ZodType, part: unknown) => { readonly is: unknown } | null;

function createReader(): Read {
  const known = new WeakMap<z.ZodType, WeakMap<object, { readonly is: unknown }>>();
  const absent = new WeakMap<z.ZodType, { readonly is: unknown }>();
  const latest = new WeakMap<z.ZodType, Map<unknown, unknown>>(); // by id, as it was read last
  const readList = (item: z.ZodType, list: readonly unknown[]): { readonly is: unknown } | null => {
    const items: unknown[] = [];
    for (const one of list) {
      const done = read(item, one);
      if (done === null) return null;
      items.push(done.is);
    }
    return { is: items };
  };
  const read: Read = (schema, part) => {
    const parts = known.get(schema) ?? new WeakMap<object, { readonly is: unknown }>();
    known.set(schema, parts);
    const before = part === undefined ? absent.get(schema) : typeof part === 'object' && part !== null ? parts.get(part) : undefined;
    if (before !== undefined) return before;
    const item = itemOf(schema);
    if (item !== null && Array.isArray(part)) {
      const list = readList(item, part);
      if (list !== null) parts.set(part, list);
      return list;
    }
    const parsed = schema.safeParse(part);
    if (!parsed.success) return null;
    const last = latest.get(schema) ?? new Map<unknown, unknown>();
    latest.set(schema, last);
    const id = typeof parsed.data === 'object' && parsed.data !== null && 'id' in parsed.data ? parsed.data.id : undefined;
    const done = { is: shareSame(last.get(id), parsed.data) };
    last.set(id, done.is);
    if (typeof part === 'object' && part !== null) parts.set(part, done);
    else if (part === undefined) absent.set(schema, done);
    return done;
  };
  return read;
}

/** The schema of the items of a list that may be left out; null for anything else, and for a list with rules of its own. */
function itemOf(schema: z.ZodType): z.ZodType | null {
  if (schema instanceof z.ZodDefault || schema instanceof z.ZodOptional) return itemOf(schema.unwrap() as z.ZodType);
  const bare = schema instanceof z.ZodArray && (schema.def.checks ?? []).length === 0;
  return bare ? (schema.element as z.ZodType) : null;
}

function readParts(json: unknown, read: Read): Case | null {
  if (typeof json !== 'object' || json === null || Array.isArray(json) || (caseDocument.def.checks ?? []).length > 0) return null;
  const { shape } = caseDocument;
  const document = json as Record<string, unknown>;
  if (Object.keys(document).some((key) => !Object.hasOwn(shape, key))) return null;
  const one: Record<string, unknown> = {};
  for (const [key, schema] of Object.entries(shape)) {
    const done = read(schema, document[key]);
    if (done === null) return null;
    if (done.is !== undefined || key in document) one[key] = done.is;
  }
  return one as Case;
}
