/**
 * The same bytes for the same value: members sorted by UTF-16 code units and numbers as ECMAScript prints them (RFC 8785), after
 * rounding to twelve significant digits and normalising text to NFC.
 */
const SIGNIFICANT_DIGITS = 12; // beyond it, exp and log differ between engines

export function roundNumber(value: number): number {
  if (!Number.isFinite(value)) throw new Error(`${value} cannot be written down`);
  return Number.isInteger(value) && Math.abs(value) < Number.MAX_SAFE_INTEGER
    ? value + 0 || 0
    : Number(value.toPrecision(SIGNIFICANT_DIGITS));
}

const PLAIN = /^[\x20-\x7e]*$/; // text that has nothing to compose

function composed(text: string): string {
  return PLAIN.test(text) ? text : text.normalize('NFC');
}

/** A copy with every number rounded and every text in NFC, members sorted; undefined members are dropped. */
export function toCanonical(value: unknown): unknown {
  if (typeof value === 'number') return roundNumber(value);
  if (typeof value === 'string') return composed(value);
  if (value === null || typeof value === 'boolean') return value;
  if (Array.isArray(value)) return value.map(toCanonical);
  if (typeof value === 'object') {
    const record = value as Record<string, unknown>;
    const sorted: Record<string, unknown> = {};
    const keys = Object.keys(record);
    // names of our own documents are plain text: sort them as they are; others by their composed form, then by code units
    const plain = keys.every((key) => PLAIN.test(key));
    const order = plain ? keys.sort() : keys.sort((a, b) => (composed(a) < composed(b) ? -1 : composed(a) > composed(b) ? 1 : 0));
    for (const key of order) if (record[key] !== undefined) sorted[composed(key)] = toCanonical(record[key]);
    return sorted;
  }
  throw new Error(`a ${typeof value} cannot be written down`);
}

/**
 * The same value with every number rounded and every text in NFC. What needs no change is shared, not copied; the order of members is left
 * as it is, since only what is written down needs one.
 */
export function toRounded<T>(value: T): T {
  return rounded(value) as T;
}

const PARTS_DEPTH = 2; // members of a document, and items of its lists

/** `toRounded` that remembers the parts of the documents it was given before; no part may be changed in place. */
export function createRounding(): <T>(value: T) => T {
  const known = new WeakMap<object, unknown>();
  return <T>(value: T) => rounded(value, { known, depth: PARTS_DEPTH }) as T;
}

interface Parts {
  readonly known: WeakMap<object, unknown>;
  readonly depth: number;
}

function rounded(value: unknown, parts?: Parts): unknown {
  if (typeof value === 'number') return roundNumber(value);
  if (typeof value === 'string') return composed(value);
  if (typeof value !== 'object' || value === null) return value;
  if (parts === undefined) return Array.isArray(value) ? roundedList(value) : roundedRecord(value as Record<string, unknown>);
  const { known, depth } = parts;
  const before = known.get(value);
  if (before !== undefined) return before;
  const inside = depth === 0 ? undefined : { known, depth: depth - 1 };
  const settled = Array.isArray(value) ? roundedList(value, inside) : roundedRecord(value as Record<string, unknown>, inside);
  known.set(value, settled);
  return settled;
}

function roundedList(value: readonly unknown[], parts?: Parts): readonly unknown[] {
  let copy: unknown[] | null = null;
  for (let index = 0; index < value.length; index += 1) {
    const item: unknown = value[index];
    const settled = rounded(item, parts);
    if (settled !== item) {
      copy ??= value.slice();
      copy[index] = settled;
    }
  }
  return copy ?? value;
}

function roundedRecord(record: Record<string, unknown>, parts?: Parts): Record<string, unknown> {
  let copy: Record<string, unknown> | null = null;
  for (const key in record) {
    const member = record[key];
    const settled = rounded(member, parts);
    if (settled !== member) {
      copy ??= { ...record };
      copy[key] = settled;
    }
  }
  return copy ?? record;
}

/** RFC 8785 text; what hashes are taken over. */
export function canonicalText(value: unknown): string {
  return textOf(value);
}

const LEAST_KEPT = 64; // characters; a shorter text is written again as fast as it is found

/** `canonicalText` that remembers the text of every part it was given before; no part may be changed in place. */
export function createCanonicalText(): (value: unknown) => string {
  const known = new WeakMap<object, string>();
  return (value) => textOf(value, known);
}

function textOf(value: unknown, known?: WeakMap<object, string>): string {
  if (typeof value === 'number') return String(roundNumber(value));
  if (typeof value === 'string') return JSON.stringify(composed(value));
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value !== 'object') throw new Error(`a ${typeof value} cannot be written down`);
  const before = known?.get(value);
  if (before !== undefined) return before;
  const text = Array.isArray(value)
    ? `[${value.map((item) => textOf(item, known)).join(',')}]`
    : membersText(value as Record<string, unknown>, known);
  if (text.length >= LEAST_KEPT) known?.set(value, text);
  return text;
}

/** Members by their composed names in the order of code units. */
function membersText(record: Record<string, unknown>, known?: WeakMap<object, string>): string {
  const names = Object.keys(record);
  // names of our own documents are plain text: sort them as they are; others by their composed form
  const plain = names.every((name) => PLAIN.test(name));
  const order = plain ? names.sort() : names.sort((a, b) => (composed(a) < composed(b) ? -1 : composed(a) > composed(b) ? 1 : 0));
  const members: string[] = [];
  for (const [index, name] of order.entries()) {
    const member = record[name];
    if (member === undefined) continue;
    if (!plain && hasSameName(order.slice(index + 1), name, record)) continue; // of two spellings of one name the last counts
    if (/^\d+$/.test(name)) throw new Error('an object member is named like a list index; such names are not used');
    members.push(`${JSON.stringify(composed(name))}:${textOf(member, known)}`);
  }
  return `{${members.join(',')}}`;
}

function hasSameName(others: readonly string[], name: string, record: Record<string, unknown>): boolean {
  return others.some((other) => record[other] !== undefined && composed(other) === composed(name));
}
