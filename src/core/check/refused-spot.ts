import type { SpotReading } from '../working/heat/spot-facts.ts';
import { type Judgement, undecided } from './decide.ts';
import { judgeState } from './judge-state.ts';

/** Why a temperature cannot be compared with any limit, or null: no reading, bare metal, or conditions that nobody wrote down. */
export function refusedSpot(reading: SpotReading): Judgement | null {
  const fields = [reading.field];
  if (reading.opened.state !== 'read') return judgeState(reading.opened, reading.field);
  if (reading.refused !== null) return undecided('notAssessed', 'refusedEvidence', { fields, notes: [{ key: reading.refused, args: {} }] });
  if (reading.missing.length > 0)
    return undecided('notAssessed', 'notComparable', {
      fields,
      notes: [{ key: 'conditionsMissing', args: { missing: reading.missing.join(', ') } }],
    });
  if (reading.temperature === null || reading.ambient === null) return undecided('notAssessed', 'notComparable', { fields });
  return null;
}
