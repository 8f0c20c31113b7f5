import { BENCH_SET, type Chapter } from '../../core/check/bench-set.ts';
import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { CHAPTER_WORDS } from '../words/hazard-words.ts';

/** Chapters of the examination in bench order. */
export const CHAPTERS = Object.keys(CHAPTER_WORDS) as readonly Chapter[];
const CHAPTER_OF = new Map(BENCH_SET.map(({ id, chapter }) => [id, chapter]));
const BENCH_ORDER = new Map(BENCH_SET.map(({ id }, index) => [id, index]));
const CHAPTERS_UNDER: readonly Chapter[] = ['cold', 'touch', 'load', 'heat', 'scope'];

/** Chapter whose evidence settles a check; a check the bench set does not know goes with what was traced. */
export function chapterOf(check: string): Chapter {
  return CHAPTER_OF.get(check) ?? 'circuit';
}

/** True where the conditions of a reading decide what it says. */
export function needsConditions(check: string): boolean {
  return CHAPTERS_UNDER.includes(chapterOf(check));
}

/** Says something: read, or refused with a reading left standing. */
export function isTelling(finding: Finding): boolean {
  return finding.outcome !== 'notApplicable' && (finding.outcome !== 'notAssessed' || finding.measured !== null);
}

const SHORT = 10; // checks that say something, up to which a report is set so that it holds at about two pages before the derivation

/** So little was examined that every finding is set in one row, and what the portrait would repeat is left to the screen. */
export function isShort({ findings }: Assessment): boolean {
  return new Set(findings.filter(isTelling).map(({ check }) => check)).size <= SHORT;
}

/** Findings of one check, in the order of the bench set. */
export function findingsByCheck({ findings }: Assessment, chapter: Chapter): readonly (readonly Finding[])[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings)
    if (chapterOf(finding.check) === chapter) groups.set(finding.check, [...(groups.get(finding.check) ?? []), finding]);
  const place = (check: string): number => BENCH_ORDER.get(check) ?? BENCH_ORDER.size;
  return [...groups].sort(([a], [b]) => place(a) - place(b)).map(([, group]) => group);
}
