import { z } from 'zod';
import { parseQuantity } from '../quantity/parse-quantity.ts';
import { parseRange } from '../quantity/parse-range.ts';
import { isRefusal, sentence } from '../quantity/refusal.ts';
import type { Kind } from '../quantity/unit.ts';

z.config({ jitless: true }); // no code from strings: the schema also runs behind a strict content-security policy

/** Slug given once and never reused. */
export const id = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]{0,39}$/, 'expected an id of small letters, digits and hyphens, at most 40 long')
  .meta({ description: 'Slug, unique in its list, never reused.' });
export type Id = string;

/** A quantity kept as typed; refused when it cannot be read as the kind asked for. */
export function quantity(kind: Kind) {
  return z
    .string()
    .superRefine((text, context) => {
      const read = parseQuantity(text, kind);
      if (isRefusal(read)) context.addIssue({ code: 'custom', message: sentence(read), params: { refusal: read } });
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
