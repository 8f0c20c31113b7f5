import type { Assessment } from '../../core/result/assessment.ts';
import { listPublications, type Publication } from '../derivation/publications.ts';
import type { SourceRecord } from '../derivation/source-text.ts';
import { toAnchor } from '../markup/anchor.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { GRADE_MEANINGS } from '../words/grade-words.ts';
import { setGrade } from './quantity.ts';

/** Where every limit, formula and default of this report stands, and how sure we are of it: publications by number, with their places. */
export function setSources(assessment: Assessment): Markup {
  const publications = listPublications(assessment);
  if (publications.length === 0) return NOTHING;
  const grades = [...new Set(publications.flatMap(({ places }) => places.map(({ grade }) => grade)))];
  return html`<ol class="sources">${joined(publications.map(setPublication))}</ol>
<ul class="dots key">${joined(grades.map((grade) => html`<li>${setGrade(grade)}: ${GRADE_MEANINGS[grade]}</li>`))}</ul>`;
}

function setPublication({ number, title, places }: Publication): Markup {
  return html`<li id="${toAnchor('source', String(number))}" tabindex="-1"><b>[${number}]</b> ${title}<ul>${joined(places.map(setPlace))}</ul></li>`;
}

function setPlace({ place, grade, checked, alsoBy, disagrees }: SourceRecord): Markup {
  const also = alsoBy === undefined || alsoBy.length === 0 ? '' : ` Printed alike in: ${alsoBy.join('; ')}.`;
  const not = disagrees === undefined || disagrees.length === 0 ? '' : ` Disagrees: ${disagrees.join('; ')}.`;
  return html`<li>${place} ${setGrade(grade)}, compared ${checked}.${also}${not}</li>`;
}
