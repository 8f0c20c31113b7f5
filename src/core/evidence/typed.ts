import { z } from 'zod';
import { parseQuantity, type Quantity } from '../quantity/parse-quantity.ts';
import { parseRange } from '../quantity/parse-range.ts';
import { isRefusal, type Refusal, refuse, sentence } from '../quantity/refusal.ts';
import { KIND_IN_WORDS, type Kind } from '../quantity/unit.ts';

z.config({ jitless: true }); // no code from strings: the schema also runs behind a strict content-security policy

/** Slug given once and never reused. */
export const id = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]{0,39}$/, 'expected an id of small letters, digits and hyphens, at most 40 long')
  .meta({ description: 'Slug, unique in its list, never reused.' });
export type Id = string;

/** Kinds that may have a sign; everything else on a bench is zero or more. Kelvin are absolute, so a temperature below 0 K falls here too. */
const SIGNED: ReadonlySet<Kind> = new Set(['voltage', 'current', 'charge', 'temperatureDifference', 'power', 'ratio']);

function impossible(read: Quantity, signed: boolean): Refusal | null {
  return read.value < 0 && !(signed && SIGNED.has(read.kind))
    ? refuse('negative', read.text, `${KIND_IN_WORDS[read.kind]}, not below zero`)
    : null;
}

/** `unsigned` for what is an amount by its nature (an rms value, a touch current) although its kind can have a sign. A quantity kept as typed; refused when it cannot be read as the kind asked for. */
export function quantity(kind: Kind, sign: 'signed' | 'unsigned' = 'signed') {
  return z
    .string()
    .superRefine((text, context) => {
      const read = parseQuantity(text, kind);
      const refusal = isRefusal(read) ? read : impossible(read, sign === 'signed');
      if (refusal !== null) context.addIssue({ code: 'custom', message: sentence(refusal), params: { refusal } });
    })
    .meta({ description: `A ${kind}, as typed, with its unit.` });
}

/** "100-240 V" as labels print it. */
export function range(kind: Kind) {
  return z
    .string()
    .superRefine((text, context) => {
      const read = parseRange(text, kind);
      if (isRefusal(read)) context.addIssue({ code: 'custom', message: sentence(read), params: { refusal: read } });
    })
    .meta({ description: `A ${kind} or a range of two, as typed, with the unit.` });
}

/** The bench's wall clock, no zone. Ordered by text. */
export const localTime = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/, 'expected a local time such as 2026-03-04T10:31:05');
export const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'expected a date such as 2026-03-04');
export const sha256 = z.string().regex(/^[0-9a-f]{64}$/, 'expected a SHA-256 in 64 hexadecimal digits');
/** Text of a person: any, but bounded and never interpreted. */
export const words = z.string().max(2000);
