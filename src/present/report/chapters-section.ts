import type { Chapter } from '../../core/check/bench-set.ts';
import type { Assessment } from '../../core/result/assessment.ts';
import { toAnchor } from '../markup/anchor.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { findingName } from '../words/finding-text.ts';
import { CHAPTER_WORDS } from '../words/hazard-words.ts';
import { CHAPTERS, findingsByCheck, isShort, isTelling } from './chapter.ts';
import { setChapterPicture } from './chapter-picture.ts';
import { setCircuit } from './circuit-section.ts';
import { setFinding } from './finding-article.ts';
import { setFindingGroup, setFindingRow } from './finding-group.ts';
import type { ReportExtras, Section } from './report-parts.ts';
import { setRuns } from './run-section.ts';
import { listUnexamined } from './unexamined-section.ts';

/** One section for every chapter in which something was examined: its picture, its findings, and what of it was not examined. */
export function listChapters(assessment: Assessment, extras: ReportExtras): readonly Section[] {
  return CHAPTERS.map((chapter) => ({
    id: `chapter-${chapter}`,
    title: CHAPTER_WORDS[chapter].title,
    body: setChapter(chapter, assessment, extras),
  }));
}

function setChapter(chapter: Chapter, assessment: Assessment, extras: ReportExtras): Markup {
  const groups = findingsByCheck(assessment, chapter);
  const picture = setChapterPicture(chapter, assessment, extras);
  const told = groups.map((group) => group.filter(isTelling)).filter((group) => group.length > 0);
  const short = isShort(assessment);
  const quiet = groups.flat().filter(({ outcome }) => outcome === 'notApplicable');
  if (told.length === 0 && picture.markup === '' && (chapter !== 'circuit' || assessment.circuit === undefined)) return NOTHING;
  const set = told.map((group) =>
    group.length === 1
      ? joined(group.map((finding) => (short ? setFindingRow(finding, assessment, extras) : setFinding(finding, assessment, extras))))
      : setFindingGroup(group, assessment, extras),
  );
  const circuit = chapter === 'circuit' ? setCircuit(assessment) : chapter === 'faults' ? setRuns(extras.runs) : NOTHING;
  return html`${circuit}${picture}${joined(set)}${setGap(chapter, assessment, quiet.map(findingName))}`;
}

/** In the place where it is missed; with its reason it stands in the list of everything not examined. */
function setGap(chapter: Chapter, assessment: Assessment, inapplicable: readonly string[]): Markup {
  const missing = listUnexamined(assessment).filter((one) => one.chapter === chapter);
  const rest = inapplicable.length === 0 ? '' : ` Not applicable: ${inapplicable.join('; ')}.`;
  if (missing.length === 0) return html`<p class="small gap-none">Every check of this chapter was assessed or does not apply.${rest}</p>`;
  const names = missing.map(
    ({ check, subjects }) => `${getCheckWords(check).title}${subjects.length === 0 ? '' : ` for ${subjects.join(', ')}`}`,
  );
  return html`<p class="gap"><b>Not examined in this chapter:</b> ${names.join('; ')}. <a class="from screen" href="#${toAnchor('part', 'unexamined')}">Why not</a>${rest}</p>`;
}
