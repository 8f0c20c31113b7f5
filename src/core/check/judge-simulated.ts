import type { FaultCampaign, FaultOutcome } from '../evidence/computed/fault-campaign.ts';
import type { Note } from '../trace/step.ts';
import { hasResult } from '../working/simulated/run-facts.ts';
import { BEYOND, type Judgement } from './decide.ts';

/**
 * What a simulated comparison is allowed to say. A failure carries the headline only from 1.3 times the limit on; a failure that hangs on an
 * assumption, and a pass that does not cover everything, are inconclusive (docs/decisions/0015-running-the-traced-circuit.md).
 */
export function asSimulated(
  judgement: Judgement,
  doubts: { readonly hangsOn: readonly Note[]; readonly open: readonly Note[] },
): Judgement {
  const notes = [...judgement.notes, ...doubts.hangsOn, ...doubts.open];
  const uncovered = judgement.outcome === 'pass' && doubts.open.length > 0;
  const assumed = (judgement.outcome === 'pass' || judgement.outcome === 'fail') && doubts.hangsOn.length > 0;
  if (uncovered || assumed) return { ...judgement, outcome: 'inconclusive', reason: 'unknownValue', headline: false, notes };
  const far = judgement.margin === null || judgement.margin >= BEYOND;
  return { ...judgement, headline: judgement.headline && far, notes };
}

/** Which fault, at which load, and how long it was watched. */
export function faultNote(one: FaultOutcome): Note {
  return { key: 'simulatedFault', args: { fault: one.fault, load: one.load, seconds: one.simulatedS } };
}

/** What every finding of a campaign carries: on how many assumptions it stands, at which mains. */
export function campaignNote({ mains, assumptions }: FaultCampaign): Note {
  return { key: 'simulatedUnder', args: { mains: mains.rmsV, assumptions: assumptions.length } };
}

/** Faults that came to no result, where there are any. */
export function withoutResult({ results }: FaultCampaign): Note[] {
  const none = results.filter((one) => !hasResult(one));
  return none.length === 0 ? [] : [{ key: 'faultsWithoutResult', args: { count: none.length, first: none[0]!.fault } }];
}
