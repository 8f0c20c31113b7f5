import type { Assessment, Next } from '../../core/result/assessment.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { getCheckWords } from '../words/check-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { BEFORE_WORDS, MEASUREMENT_HAZARDS, measurementText, prospectText, STOPS } from '../words/next-words.ts';
import { linkToStep } from './report-parts.ts';

/** What to measure next, what it would settle, and what can hurt while doing it. */
export function setNext(assessment: Assessment): Markup {
  const { next, lastChance } = assessment;
  if (next.length === 0 && lastChance.length === 0) return NOTHING;
  const steps = next.length === 0 ? NOTHING : html`<ol class="nexts">${joined(next.map((one) => setOne(one, assessment)))}</ol>`;
  const last = lastChance.filter(({ measure }) => measure.length > 0);
  const chances =
    last.length === 0
      ? NOTHING
      : html`<h3 class="hz">What can only be measured now</h3><ul class="dots">${joined(last.map(({ before, measure }) => html`<li><b>${BEFORE_WORDS[before]}</b>: ${measure.map((key) => measurementText(key)).join('; ')}</li>`))}</ul>`;
  return html`${steps}${chances}`;
}

function setOne(one: Next, assessment: Assessment): Markup {
  const settles = [...new Set(one.settles.map((id) => getCheckWords(id.split('@')[0] ?? id).title))];
  const hazards = one.hazard.map((key) => sentenceFor(MEASUREMENT_HAZARDS, key));
  const stops = one.stop.map(({ of, at, step }) => {
    const limit = `${sentenceFor(STOPS, of)} ${amountText(at)}`;
    return step !== null && assessment.steps.some(({ id }) => id === step) ? linkToStep(step, limit) : html`${limit}`;
  });
  const before = one.before === null ? '' : ` (${BEFORE_WORDS[one.before]})`;
  return html`<li><b>${measurementText(one.measure, one.about)}${before}.</b> ${settles.length === 0 ? '' : `Settles: ${settles.join(', ')}. `}${prospectText(one)}<br><span class="small">${hazards.length === 0 ? NOTHING : html`Hazard: ${hazards.join(', ')}. `}${stops.length === 0 ? NOTHING : html`Stop at: ${joined(stops, ', ')}.`}</span></li>`;
}
