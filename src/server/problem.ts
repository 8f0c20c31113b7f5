import type { Context } from 'hono';
import { isRefusal, type Refusal, sentence } from '../core/quantity/refusal.ts';

/** A problem as RFC 9457 writes it: one sentence in `detail`, a stable code, and the place it is about. */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly code: string;
  readonly place: string;
}

const MEDIA = 'application/problem+json';

/** What kind of answer a refusal is: not there, in the way of somebody else, no room, or not understood. */
const STATUS_OF: Readonly<Record<string, number>> = {
  'no-such-case': 404,
  'case-missing': 404,
  'no-such-step': 404,
  'no-such-file': 404,
  'no-such-picture': 404,
  'no-such-page': 404,
  'no-such-version': 404,
  'no-such-run': 404,
  'file-missing': 404,
  'id-taken': 409,
  'case-exists': 409,
  busy: 409,
  'too-large': 413,
  'unknown-media': 415,
  'disk-full': 507,
  'casebook-read-only': 409,
};
const NOT_UNDERSTOOD = 422;

export function problemOf(refusal: Refusal): Problem {
  const status = STATUS_OF[refusal.code] ?? NOT_UNDERSTOOD;
  return {
    type: 'about:blank',
    title: refusal.code.replaceAll('-', ' '),
    status,
    detail: toDetail(refusal),
    code: refusal.code,
    place: refusal.place,
  };
}

/** What the disk refused, said of the entry and not of the file: whoever asks from a phone need not know where the casebook lies. */
const OF_THE_DISK: Readonly<Record<string, string>> = {
  'disk-full': 'The disk is full: nothing of this was kept, everything before it is.',
  'disk-failed': 'The disk does not read or write: nothing of this was kept, everything before it is.',
  'casebook-in-use': 'Another program holds the casebook: nothing of this was kept, everything before it is.',
  'casebook-read-only': 'The casebook cannot be written to: nothing of this was kept, everything before it is.',
};

/** The refusal as a sentence; its place is a member of its own. */
function toDetail(refusal: Refusal): string {
  const own = OF_THE_DISK[refusal.code];
  if (own !== undefined) return own;
  const plain = sentence({ ...refusal, place: '' });
  return `${plain.charAt(0).toUpperCase()}${plain.slice(1)}${/[.?!]$/.test(plain) ? '' : '.'}`;
}

export function toProblem(status: number, code: string, detail: string, place = ''): Problem {
  return { type: 'about:blank', title: code.replaceAll('-', ' '), status, detail, code, place };
}

export function answerProblem(problem: Problem): Response {
  return new Response(JSON.stringify(problem), { status: problem.status, headers: { 'content-type': MEDIA } });
}

/** The value as JSON, or its refusal as a problem. */
export function answer(context: Context, value: unknown): Response {
  return isRefusal(value) ? answerProblem(problemOf(value)) : context.json(value as object);
}
