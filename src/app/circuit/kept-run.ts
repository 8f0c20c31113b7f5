import type { Attachment, computed } from '../../core/evidence/case.ts';
import { canonicalText } from '../../core/result/canonical.ts';
import { digestOfBytes } from '../../core/result/digest.ts';

/** A result that is ready to be kept: its file, and how the case names it. */
export interface KeptRun<T> {
  readonly result: T;
  readonly bytes: Uint8Array;
  readonly attachment: Attachment;
  readonly computed: ReturnType<(typeof computed)['parse']>;
}

const MOST_ID = 40;
/** Digits beyond which engines may differ, and beyond which nobody reads a waveform. */
const DIGITS = 6;

export function keptRun<T extends { readonly recipe: string; readonly key: string }>(name: string, raw: T): KeptRun<T> {
  const result = shortened(raw) as T;
  const bytes = new TextEncoder().encode(`${canonicalText(result)}\n`);
  const id = name.slice(0, MOST_ID);
  const attachment = { id, path: `${id}.json`, sha256: digestOfBytes(bytes), bytes: bytes.length, media: 'application/json' };
  return { result, bytes, attachment, computed: { id, recipe: result.recipe, key: result.key, from: ['/parts'], file: id } };
}

function shortened(value: unknown): unknown {
  if (typeof value === 'number') return Number.isInteger(value) ? value : Number(value.toPrecision(DIGITS));
  if (Array.isArray(value)) return value.map(shortened);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, own]) => [key, shortened(own)]));
}
