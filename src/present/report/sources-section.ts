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
  const alike = new Map<string, SourceRecord[]>();
  for (const place of places)
    alike.set(`${place.grade} ${place.checked}`, [...(alike.get(`${place.grade} ${place.checked}`) ?? []), place]);
  return html`<li id="${toAnchor('source', String(number))}" tabindex="-1"><b>[${number}]</b> ${title}${joined([...alike.values()].map(setAlike))}</li>`;
}

/** Places of one grade that were compared on one day. */
function setAlike(places: readonly SourceRecord[]): Markup {
  const [first] = places;
  if (first === undefined) return NOTHING;
  return html`<p>${setGrade(first.grade)}, compared ${first.checked}: ${joined(places.map(setPlace), '; ')}.</p>`;
}

function setPlace({ place, alsoBy, disagrees }: SourceRecord): Markup {
  const more = [
    ...(alsoBy === undefined || alsoBy.length === 0 ? [] : [`printed alike in: ${alsoBy.join('; ')}`]),
    ...(disagrees === undefined || disagrees.length === 0 ? [] : [`disagrees: ${disagrees.join('; ')}`]),
  ];
  return html`${place}${more.length === 0 ? '' : ` (${more.join('. ')})`}`;
}
