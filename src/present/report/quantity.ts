import type { Amount, Finding, Measured } from '../../core/result/assessment.ts';
import { html, type Markup, NOTHING } from '../markup/markup.ts';
import { printAmount, type Show } from '../words/amount-text.ts';
import { foundText } from '../words/found-words.ts';
import { GRADE_STROKES, GRADE_WORDS } from '../words/grade-words.ts';

/** A number as the report sets it: digits in ink, the unit thin, never broken over two lines. */
export function setAmount(amount: Amount, show?: Show): Markup {
  const { number, plusMinus, unit } = printAmount(amount, show);
  return html`<span class="q">${number}${plusMinus === null ? NOTHING : html` ± ${plusMinus}`}${unit === '' ? NOTHING : html` <span class="u">${unit}</span>`}</span>`;
}

export function setMeasured(measured: Measured, show?: Show): Markup {
  return 'word' in measured ? html`${foundText(measured.word)}` : setAmount(measured, show);
}

/** How well a figure is sourced: a stroke like the limit's, and the word. */
export function setGrade(grade: NonNullable<Finding['limit']>['grade']): Markup {
  return html`<span class="grade ${GRADE_STROKES[grade]}">${GRADE_WORDS[grade]}</span>`;
}
