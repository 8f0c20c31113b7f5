import type { Assessment } from '../../core/result/assessment.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { GRADE_WORDS } from '../words/grade-words.ts';
import { ALWAYS_GIVEN, SETTING_VALUES, SETTINGS } from '../words/setting-words.ts';

/** The conditions the judgement assumed; one that was changed from its default shows it. */
export function setFacts(assessment: Assessment): Markup {
  const facts = Object.entries(assessment.setting)
    .sort(byReading)
    .map(([key, { value, from, source }]) => {
      const grade = source === null ? '' : `, ${GRADE_WORDS[source.grade]}`;
      const origin = ALWAYS_GIVEN.includes(key)
        ? NOTHING
        : from === 'case'
          ? html`<i class="changed">changed from the default</i>`
          : html`<i>default${grade}</i>`;
      return html`<div><dt>${sentenceFor(SETTINGS, key)}</dt><dd>${sentenceFor(SETTING_VALUES, value)}${origin}</dd></div>`;
    });
  return facts.length === 0 ? NOTHING : html`<dl class="facts">${joined(facts)}</dl>`;
}

/** In the order in which a reader asks, which is the order of the words; what has no words comes last. */
function byReading([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number {
  const order = Object.keys(SETTINGS);
  const place = (key: string): number => (order.includes(key) ? order.indexOf(key) : order.length);
  return place(a) - place(b) || (a < b ? -1 : a > b ? 1 : 0);
}
