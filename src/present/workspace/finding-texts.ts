import type { Assessment, Finding } from '../../core/result/assessment.ts';

const MAPS = new WeakMap<Assessment, ReadonlyMap<string, string>>();
const TEXTS = new WeakMap<object, string>();

/** Each finding as one text, to tell whether it says the same as before. Worked out once for a finding. */
export function findingTexts(assessment: Assessment): ReadonlyMap<string, string> {
  const known = MAPS.get(assessment);
  if (known !== undefined) return known;
  const texts = new Map(assessment.findings.map((finding: Finding) => [finding.id, textOnce(finding)]));
  MAPS.set(assessment, texts);
  return texts;
}

/** A part of an Assessment as text, empty where it has none; the same part is written once, however many Assessments it stands in. */
export function textOnce(part: object | undefined): string {
  if (part === undefined) return '';
  const known = TEXTS.get(part);
  if (known !== undefined) return known;
  const text = JSON.stringify(part);
  TEXTS.set(part, text);
  return text;
}
