import type { Milestone } from '../evidence/day.ts';
import type { Finding } from '../result/assessment.ts';

interface GivenUp {
  readonly because: string;
  /** Pointer into the case. */
  readonly field: string;
}

/**
 * Measurements given up at a point of no return, with the reason. A sample that was closed again can be measured as a closed one:
 * what was given up at its opening is asked for again.
 */
export function findGivenUp(events: readonly Milestone[]): ReadonlyMap<string, GivenUp> {
  const found = new Map<string, GivenUp>();
  for (const { id, at, what, leftOut = [] } of events) {
    const closedAgain = what === 'opened' && events.some((later) => later.what === 'reclosed' && later.at > at);
    if (closedAgain) continue;
    for (const { id: item, measure, because } of leftOut) found.set(measure, { because, field: `/events/${id}/leftOut/${item}` });
  }
  return found;
}

/** "Nobody looked" becomes "cannot now" where the measurement that the check asks for was given up. What was read stays as it is. */
export function withGivenUp(finding: Finding, need: string | undefined, givenUp: ReadonlyMap<string, GivenUp>): Finding {
  const found = need === undefined ? undefined : givenUp.get(need);
  if (found === undefined || finding.outcome !== 'notAssessed' || finding.reason !== 'notLooked') return finding;
  const notes = found.because.trim() === '' ? finding.notes : [...finding.notes, { key: 'because', args: { because: found.because } }];
  return { ...finding, reason: 'cannotNow', fields: [...finding.fields, found.field], notes };
}
