import type { Finding, Outcome, Rung } from '../../core/result/assessment.ts';
import { probabilityText } from './probability-text.ts';

/** One word for one outcome, in every case and place. */
export const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = {
  pass: 'pass',
  fail: 'fail',
  inconclusive: 'inconclusive',
  notAssessed: 'not assessed',
  notApplicable: 'not applicable',
};

/** The same wording in full for the same rung of a barrier. */
export const RUNG_WORDS: Readonly<Record<Rung, string>> = {
  bridgedOrAbsent: 'bridged or absent',
  belowBasic: 'below basic',
  basicNotReinforced: 'basic met, reinforced not',
  undecided: 'undecided',
  reinforcedMet: 'reinforced met',
  basicMet: 'basic met, enough here',
};

/** Remark that turns "undecided" into the part that is certain. */
export const BASIC_IS_CERTAIN = 'basicMetRestUndecided';
const BASIC_CERTAIN_WORDS = 'basic met, rest undecided';
const ABSENT = 'absent';

/** The rung of a barrier finding in words, or null for a finding without rungs. */
export function rungText(finding: Finding): string | null {
  if (finding.rung === undefined) return null;
  if (finding.rung === 'undecided' && finding.notes.some(({ key }) => key === BASIC_IS_CERTAIN)) return BASIC_CERTAIN_WORDS;
  // what is found tells which of the two it is: nothing there, or something that leads across
  if (finding.rung === 'bridgedOrAbsent' && finding.measured !== null)
    return 'word' in finding.measured && finding.measured.word === ABSENT ? ABSENT : 'bridged';
  return RUNG_WORDS[finding.rung];
}

/** The word at the end of a row: the rung where there is one, the probability where it is inconclusive. */
export function outcomeText(finding: Finding): string {
  const rung = finding.outcome === 'notAssessed' || finding.outcome === 'notApplicable' ? null : rungText(finding);
  if (rung !== null) return rung;
  if (finding.outcome === 'inconclusive' && finding.probability !== null) return `${probabilityText(finding.probability)} likely to pass`;
  return OUTCOME_WORDS[finding.outcome];
}
