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

function rounded(value: unknown): unknown {
  if (typeof value === 'number') return roundNumber(value);
  if (typeof value === 'string') return composed(value);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) {
    let copy: unknown[] | null = null;
    for (let index = 0; index < value.length; index += 1) {
      const item: unknown = value[index];
      const settled = rounded(item);
      if (settled !== item) {
        copy ??= value.slice();
        copy[index] = settled;
      }
    }
    return copy ?? value;
  }
  const record = value as Record<string, unknown>;
  let copy: Record<string, unknown> | null = null;
  for (const key in record) {
    const member = record[key];
    const settled = rounded(member);
    if (settled !== member) {
      copy ??= { ...record };
      copy[key] = settled;
    }
  }
  return copy ?? value;
}

/** RFC 8785 text; what hashes are taken over. */
export function canonicalText(value: unknown): string {
  return JSON.stringify(sortedMembers(toCanonical(value)));
}

/** Object.fromEntries puts integer-like keys first; JSON.stringify follows. RFC 8785 wants code-unit order, so write such objects by hand. */
function sortedMembers(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sortedMembers);
  if (typeof value !== 'object' || value === null) return value;
  const keys = Object.keys(value);
  if (keys.some((key) => /^\d+$/.test(key))) throw new Error('an object member is named like a list index; such names are not used');
  return Object.fromEntries(Object.entries(value).map(([key, member]) => [key, sortedMembers(member)]));
}
