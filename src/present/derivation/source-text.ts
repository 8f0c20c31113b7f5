import type { Assessment, Finding, Step } from '../../core/result/assessment.ts';
import { GRADE_WORDS } from '../words/grade-words.ts';

export type SourceRecord = NonNullable<Step['source']>;

/** "IEC 60664-1, ..., 2007, table F.4 (secondary copy)". */
export function sourceText(source: SourceRecord): string {
  return `${sourcePlace(source)} (${GRADE_WORDS[source.grade]})`;
}

export function sourcePlace({ publication, edition, place }: SourceRecord): string {
  return [publication, edition === 'none' ? '' : edition, place].filter((part) => part !== '').join('; ');
}

/** Every source that a limit, a step or a setting of this Assessment names, once, in order of publication and place. */
export function listSources(assessment: Assessment): readonly SourceRecord[] {
  const found = new Map<string, SourceRecord>();
  const add = (source: SourceRecord | null | undefined): void => {
    if (source !== null && source !== undefined) found.set(`${sourcePlace(source)} ${source.grade}`, source);
  };
  for (const { limit, others } of assessment.findings) for (const one of limit === null ? others : [limit, ...others]) add(one.source);
  for (const { source } of assessment.steps) add(source);
  for (const { source } of Object.values(assessment.setting)) add(source);
  return [...found.entries()].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, source]) => source);
}

/** Steps a finding leads to: its own, and that of its limit. */
export function stepsOf(finding: Finding): readonly { readonly words: string; readonly step: string }[] {
  const value = finding.step === null ? [] : [{ words: 'origin of the value', step: finding.step }];
  const limit = finding.limit?.step === undefined ? [] : [{ words: 'origin of the limit', step: finding.limit.step }];
  return [...value, ...limit];
}
