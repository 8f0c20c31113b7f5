import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import type { CaseInput } from '../../src/core/evidence/case.ts';
import { toEvidence } from '../../src/core/working/circuit/to-evidence.ts';
import { COMMON_CONDUCTORS } from './full-day.ts';

type Parts = NonNullable<CaseInput['parts']>;

/** A board as somebody traced it, one part a line, with what was read of single parts beside the tracing. */
export function tracedUnit(lines: string, read: Parts): Pick<CaseInput, 'parts' | 'conductors'> {
  const { trace, refusals } = parseTrace(lines);
  if (refusals.length > 0) throw new Error(JSON.stringify(refusals));
  const { parts, conductors } = toEvidence(trace);
  const known = new Set(COMMON_CONDUCTORS.map(({ id }) => id));
  const traced = parts.map((part) => {
    const more = read.find(({ id }) => id === part.id);
    return more === undefined
      ? part
      : {
          ...part,
          ...more,
          rating: { ...part.rating, ...more.rating },
          kind: part.kind,
          ...(part.pins === undefined ? {} : { pins: part.pins }),
        };
  });
  const ids = new Set(traced.map(({ id }) => id));
  return {
    parts: [
      ...traced.map((part) => (Object.keys(part.rating ?? {}).length === 0 ? withoutRating(part) : part)),
      ...read.filter(({ id }) => !ids.has(id)),
    ],
    conductors: [...COMMON_CONDUCTORS, ...conductors.filter(({ id }) => !known.has(id))],
  };
}

function withoutRating({ rating: _none, ...part }: Parts[number]): Parts[number] {
  return part;
}
