import type { FaultCampaign, FaultOutcome } from '../../evidence/computed/fault-campaign.ts';
import { cite } from '../../source/source.ts';
import { type RunSubject, subjectsOf } from '../../working/simulated/run-facts.ts';
import { type LimitLine, oneOf } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { asSimulated, campaignNote, faultNote, withoutResult } from '../judge-simulated.ts';

const RULE: LimitLine = {
  name: 'noPartBeyond',
  kind: 'oneOf',
  at: null,
  words: ['withinRatings'],
  source: cite('house', 'no part is driven beyond what it is rated for by the failure of another', 'reasoned'),
  grade: 'reasoned',
};

/** Does the failure of one part drive another beyond its rating? A capacitor beyond its printed voltage vents; a junction that breaks down leaves the end open. */
export const faultStress = defineCheck<RunSubject<FaultCampaign>>({
  id: 'fire/fault-stress',
  consequence: 'injurious',
  needs: ['faultRun'],
  subjects: ({ runs }) => (runs.campaigns.length === 0 ? 'notLooked' : subjectsOf(runs.campaigns)),
  judge: (_, { run }) => {
    const bursts = run.results.filter((one) => has(one, 'ratingExceeded'));
    const breaks = run.results.filter((one) => has(one, 'breakdown'));
    const worst = bursts[0] ?? breaks[0];
    const judgement = oneOf(
      worst === undefined ? 'withinRatings' : bursts.length > 0 ? 'capacitorBeyond' : 'junctionBreaks',
      RULE,
      worst === undefined,
      [],
    );
    const named =
      worst === undefined
        ? []
        : [faultNote(worst), { key: 'partBeyond', args: { parts: partsOf(bursts.length > 0 ? bursts : breaks).join(', ') } }];
    const healthy = run.tolerated.length === 0 ? [] : [{ key: 'beyondWhileHealthy', args: { parts: run.tolerated.join(', ') } }];
    const onlyBreaks = worst !== undefined && bursts.length === 0 ? [{ key: 'afterBreakdownUnknown', args: {} }] : [];
    return {
      judgement: asSimulated(
        { ...judgement, notes: [...named, campaignNote(run)] },
        { hangsOn: onlyBreaks, open: [...withoutResult(run), ...healthy] },
      ),
    };
  },
});

const has = ({ findings }: FaultOutcome, code: FaultOutcome['findings'][number]['code']): boolean =>
  findings.some((one) => one.code === code);

function partsOf(results: readonly FaultOutcome[]): string[] {
  return [
    ...new Set(
      results.flatMap(({ findings }) =>
        findings.flatMap(({ code, ref }) => (code === 'ratingExceeded' || code === 'breakdown' ? [ref] : [])),
      ),
    ),
  ].sort();
}
