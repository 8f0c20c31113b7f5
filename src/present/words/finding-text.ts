import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { measuredText } from './amount-text.ts';
import { STATE_WORDS } from './case-words.ts';
import { getCheckWords } from './check-words.ts';
import { GRADE_WORDS } from './grade-words.ts';
import { limitText, namedLimitText } from './limit-words.ts';
import { OUTCOME_WORDS, outcomeText } from './outcome-words.ts';
import { probabilityText } from './probability-text.ts';
import { REASON_WORDS } from './reason-words.ts';
import { riseText } from './rise-text.ts';

/** "Creepage, bulk plus to output minus". */
export function findingName(finding: Finding): string {
  const { title } = getCheckWords(finding.check);
  return finding.about === null ? title : `${title}, ${finding.about}`;
}

/** What was found, or why there is nothing. */
export function findingValue(finding: Finding): string {
  return finding.measured === null ? '' : measuredText(finding.measured, finding.show);
}

/** A reading that cannot count as evidence stays, struck through; one that only lacks a limit is not struck. */
export function isStruck({ outcome, reason }: Finding): boolean {
  return outcome === 'notAssessed' && STRIKING.includes(reason);
}

const STRIKING: readonly Finding['reason'][] = ['refusedEvidence', 'struck', 'notComparable', 'contradicted'];

/** "at least 5.0 mm, basic 2.5 mm": the limit that decides, and the lower rung where there is one. */
export function findingLimit(finding: Finding): string {
  if (finding.limit === null) return '';
  const basic = finding.limit.name === 'basic' ? undefined : finding.others.find(({ name }) => name === 'basic');
  const lower = basic === undefined ? '' : `, basic ${limitText(basic, finding.show).replace(/^at (?:least|most) /, '')}`;
  return `${limitText(finding.limit, finding.show)}${lower}`;
}

/** Whether a finding is decided, and how surely. */
export function decisionText(finding: Finding): string {
  const probability =
    finding.probability === null ? '' : `The probability that the limit is met is ${probabilityText(finding.probability)}. `;
  const word = outcomeText(finding);
  return `${probability}${word.charAt(0).toUpperCase()}${word.slice(1)}: ${REASON_WORDS[finding.reason]}.`;
}

/** Found against limit with the grade, as the verdict quotes it after the name. */
export function decidedText(finding: Finding): string {
  const state = finding.state === undefined || finding.state === 'tested' ? '' : ` ${STATE_WORDS[finding.state]}`;
  const value = findingValue(finding);
  const found = value === '' ? OUTCOME_WORDS[finding.outcome] : `${value}${state}`;
  if (finding.limit === null) return found;
  if (finding.limit.kind === 'oneOf') return `${found}; asked for: ${limitText(finding.limit)} (${GRADE_WORDS[finding.limit.grade]})`;
  const rise = riseText(finding);
  return `${found}; the limit is ${namedLimitText(finding.limit, finding.show)} (${GRADE_WORDS[finding.limit.grade]})${rise === '' ? '' : `, ${rise}`}`;
}

export function getFinding(assessment: Assessment, id: string): Finding | undefined {
  return assessment.findings.find((finding) => finding.id === id);
}
