import type { Reason } from '../../core/result/assessment.ts';

/** Why an outcome is what it is; the end of a sentence that begins with the outcome. */
export const REASON_WORDS: Readonly<Record<Reason, string>> = {
  met: 'the limit is met',
  notMet: 'the limit is not met',
  withinUncertainty: 'the reading is too close to the limit for its uncertainty',
  uncertaintyUnknown: 'the uncertainty of the reading is not known',
  oneSided: 'the reading is only a bound, and the limit lies beyond it',
  branchesDisagree: 'the uncertainty spans two cases that give different outcomes',
  outOfRange: 'a formula was used outside the range in which it is known to hold',
  unknownValue: 'looked at, but the value could not be told',
  notLooked: 'nobody has looked yet',
  cannotNow: 'it was possible once; the sample no longer allows it',
  notComparable: 'the reading was taken under conditions that do not compare with the limit',
  refusedEvidence: 'the reading cannot count as evidence',
  contradicted: 'two readings contradict each other',
  limitUnknown: 'the limit is not known to us',
  notImplemented: 'this version does not work this check out',
  doesNotApply: 'the question does not arise for this unit',
  struck: 'the evidence was struck by the examiner',
};
