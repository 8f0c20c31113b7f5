import type { FaultCampaign } from '../../evidence/computed/fault-campaign.ts';
import { resistiveIgnition } from '../../table/iec-62368-1/2018/resistive-ignition.ts';
import { getCell } from '../../table/look-up.ts';
import { hasResult, type RunSubject, simulatedValue, subjectsOf } from '../../working/simulated/run-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { asSimulated, campaignNote, faultNote, withoutResult } from '../judge-simulated.ts';

/** How much power goes on heating one part after a single fault that nothing interrupts? By simulation, where the circuit came to rest. */
export const faultWithoutFuse = defineCheck<RunSubject<FaultCampaign>>({
  id: 'fire/fault-without-fuse',
  consequence: 'injurious',
  needs: ['faultRun'],
  subjects: ({ runs }) => (runs.campaigns.length === 0 ? 'notLooked' : subjectsOf(runs.campaigns)),
  judge: ({ setting }, { id, run }) => {
    const uninterrupted = run.results.filter(
      (one) => hasResult(one) && one.settled !== null && !one.findings.some(({ code }) => code === 'fuseOpened'),
    );
    const heated = uninterrupted.flatMap((one) => one.hotter.slice(0, 1).map((part) => ({ one, part })));
    const [worst] = heated.toSorted((a, b) => b.part.watts - a.part.watts || (a.one.fault < b.one.fault ? -1 : 1));
    // what ended at a rating or still moved was not seen to its end: nobody knows what it goes on to draw
    const unseen = run.results.filter(
      (one) => hasResult(one) && one.settled === null && !one.findings.some(({ code }) => code === 'fuseOpened'),
    );
    const open = [
      ...withoutResult(run),
      ...(unseen.length === 0 ? [] : [{ key: 'faultsNotSeenToEnd', args: { count: unseen.length, first: unseen[0]!.fault } }]),
    ];
    const none = run.fuses.length === 0 ? [{ key: 'nothingThatOpens', args: {} }] : [];
    if (worst === undefined)
      return { judgement: undecided('inconclusive', 'unknownValue', { notes: [campaignNote(run), ...none, ...open] }) };
    const power = simulatedValue(`${id}/fault-power`, worst.part.watts, 'W', 'power');
    const limit = limitLine('ignites', 'atMost', getCell(resistiveIgnition, 'settled', 'most', 'simulated/ignition', 'P'));
    const notes = [faultNote(worst.one), { key: 'heatedPart', args: { part: worst.part.part } }, campaignNote(run), ...none];
    return { judgement: asSimulated({ ...atMost(power, limit, setting.decision), notes }, { hangsOn: [], open }) };
  },
});
