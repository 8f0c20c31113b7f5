import type { Assessment } from '../../core/result/assessment.ts';
import { listSources, sourcePlace } from '../derivation/source-text.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { GRADE_MEANINGS } from '../words/grade-words.ts';
import { setGrade } from './quantity.ts';

/** Where every limit, formula and default of this report stands, and how sure we are of it. */
export function setSources(assessment: Assessment): Markup {
  const sources = listSources(assessment);
  if (sources.length === 0) return NOTHING;
  const rows = sources.map((source) => {
    const also = source.alsoBy === undefined || source.alsoBy.length === 0 ? '' : ` Printed alike in: ${source.alsoBy.join('; ')}.`;
    const disagrees = source.disagrees === undefined || source.disagrees.length === 0 ? '' : ` Disagrees: ${source.disagrees.join('; ')}.`;
    return html`<tr><td>${sourcePlace(source)}.${also}${disagrees}</td><td>${setGrade(source.grade)}</td><td data-h="compared">${source.checked}</td></tr>`;
  });
  const grades = [...new Set(sources.map(({ grade }) => grade))];
  return html`<table class="d stack"><thead><tr><th scope="col">source</th><th scope="col">grade</th><th scope="col">compared</th></tr></thead><tbody>${joined(rows)}</tbody></table>
<ul class="dots key">${joined(grades.map((grade) => html`<li>${setGrade(grade)}: ${GRADE_MEANINGS[grade]}</li>`))}</ul>`;
}
