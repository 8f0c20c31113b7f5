import type { Assessment } from '../../core/result/assessment.ts';

const TEXTS = new WeakMap<Assessment, ReadonlyMap<string, string>>();

/** Each finding as one text, to tell whether it says the same as before. Worked out once for an Assessment. */
export function findingTexts(assessment: Assessment): ReadonlyMap<string, string> {
  const known = TEXTS.get(assessment);
  if (known !== undefined) return known;
  const texts = new Map(assessment.findings.map((finding) => [finding.id, JSON.stringify(finding)]));
  TEXTS.set(assessment, texts);
  return texts;
}
