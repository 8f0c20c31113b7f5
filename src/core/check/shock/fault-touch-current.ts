import type { FaultCampaign } from '../../evidence/computed/fault-campaign.ts';
import { touchCurrent as limits } from '../../table/iec-62368-1/2018/touch-current.ts';
import { getCell } from '../../table/look-up.ts';
import { hasResult, type RunSubject, simulatedValue, subjectsOf } from '../../working/simulated/run-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { asSimulated, campaignNote, faultNote, withoutResult } from '../judge-simulated.ts';

/** Current through a person on earth who holds the output, when any single part has failed: by simulation, with the body network of IEC 60990. */
export const faultTouchCurrent = defineCheck<RunSubject<FaultCampaign>>({
  id: 'shock/fault-touch-current',
  consequence: 'lethal',
  needs: ['faultRun'],
  subjects: ({ runs }) => (runs.campaigns.length === 0 ? 'notLooked' : subjectsOf(runs.campaigns)),
  judge: ({ setting }, { id, run }) => {
    const known = run.results.filter((one) => hasResult(one) && one.touchRmsA !== null);
    const [worst] = known.toSorted((a, b) => b.touchRmsA! - a.touchRmsA! || (a.fault < b.fault ? -1 : 1));
    // a short inside transformer or optocoupler joins output and mains: no run says less, and none was made
    const barrier = run.acrossBarrier.length === 0 ? [] : [{ key: 'barrierFaultsNotRun', args: { count: run.acrossBarrier.length } }];
    if (worst === undefined)
      return { judgement: undecided('inconclusive', 'unknownValue', { notes: [campaignNote(run), ...withoutResult(run)] }) };
    const current = simulatedValue(`${id}/fault-touch`, worst.touchRmsA!, 'A', 'current');
    const line = (row: 'es1' | 'es2') => limitLine(row, 'atMost', getCell(limits, row, 'rms', `simulated/touch-${row}`, 'I'));
    const felt = atMost(current, line('es1'), setting.decision);
    const letGo = atMost(current, line('es2'), setting.decision);
    const notes = [faultNote(worst), campaignNote(run), ...barrier];
    const lethal = letGo.outcome === 'fail' && letGo.headline;
    const judgement = lethal ? { ...letGo, others: [line('es1')] } : { ...felt, others: [line('es2')] };
    return {
      judgement: asSimulated({ ...judgement, notes }, { hangsOn: [], open: withoutResult(run) }),
      consequence: lethal ? 'lethal' : 'injurious',
      show: 'milliamperes',
    };
  },
});
