import type { FaultCampaign, FaultOutcome } from '../../evidence/computed/fault-campaign.ts';
import { getCell } from '../../table/look-up.ts';
import { faultVoltage } from '../../table/usb/2010/fault-voltage.ts';
import type { Derived } from '../../trace/derived.ts';
import { findRead } from '../../working/bench/open-value.ts';
import type { Facts } from '../../working/facts.ts';
import { hasResult, type RunSubject, simulatedValue, subjectsOf } from '../../working/simulated/run-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { asSimulated, campaignNote, faultNote, withoutResult } from '../judge-simulated.ts';

/** What does the output reach at worst when any single part has failed? By simulation of the traced circuit, at the highest mains. */
export const faultOvervoltage = defineCheck<RunSubject<FaultCampaign>>({
  id: 'harm/fault-overvoltage',
  consequence: 'damaging',
  needs: ['faultRun'],
  subjects: ({ runs }) => (runs.campaigns.length === 0 ? 'notLooked' : subjectsOf(runs.campaigns)),
  judge: (facts, { id, run }) => {
    const worst = worstOf(run);
    if (worst === null) return { judgement: undecided('inconclusive', 'unknownValue', { notes: withoutResult(run) }) };
    const highest = simulatedValue(`${id}/fault-voltage`, worst.outputMostV!, 'V', 'mean', stillRising(worst) ? 'above' : undefined);
    const notes = [faultNote(worst), campaignNote(run)];
    const line = limitOf(facts, run);
    if (line === null) return { judgement: undecided('notAssessed', 'limitUnknown', { measured: highest, notes }) };
    const judgement = atMost(highest, limitLine('deviceStandsOnce', 'atMost', line), facts.setting.decision);
    const trip = judgement.outcome === 'fail' && !run.tripKnown ? [{ key: 'tripNotKnown', args: {} }] : [];
    return { judgement: asSimulated({ ...judgement, notes }, { hangsOn: trip, open: withoutResult(run) }) };
  },
});

function worstOf({ results }: FaultCampaign): FaultOutcome | null {
  const known = results.filter((one) => hasResult(one) && one.outputMostV !== null);
  return known.toSorted((a, b) => b.outputMostV! - a.outputMostV! || (a.fault < b.fault ? -1 : 1))[0] ?? null;
}

/** The run ended before the output did: it reaches at least this. */
function stillRising({ state, slopeVPerS }: FaultOutcome): boolean {
  return state === 'ratingExceeded' || (state === 'stillMoving' && (slopeVPerS ?? 0) > 0);
}

const FIVE_V = 5; // the level that has a figure of its own

/** 9 V for a 5 V socket; beyond the window of a negotiated level; no publication says it of another outlet. */
function limitOf({ bench, levels }: Facts, { level }: FaultCampaign): Derived | null {
  const port = bench.ports.get(level.port);
  const kind = findRead(port?.kind);
  const usb = kind === 'usbA' || kind === 'usbC' || kind === 'microB';
  if (usb && level.volts === FIVE_V) return getCell(faultVoltage, 'usb5', 'most', 'simulated/fault-limit', 'V');
  return levels.find((one) => one.port.id === level.port && one.level.id === level.id)?.window?.harmful ?? null;
}
