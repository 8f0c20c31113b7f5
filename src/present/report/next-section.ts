import type { Assessment, Next } from '../../core/result/assessment.ts';
import { stepNumber } from '../derivation/step-number.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { BEFORE_WORDS, MEASUREMENT_HAZARDS, measurementText, prospectText } from '../words/next-words.ts';
import { stopText } from '../words/stop-text.ts';
import { linkToStep } from './report-parts.ts';

/** What can only be measured now, then what to measure next: what it would settle, what can hurt, and where to stop. */
export function setNext(assessment: Assessment): Markup {
  const { next } = assessment;
  const steps = next.length === 0 ? NOTHING : html`<ol class="nexts">${joined(next.map((one) => setOne(one, assessment)))}</ol>`;
  return html`${setLastChance(assessment)}${steps}`;
}

/** One short list before each point of no return. */
function setLastChance({ lastChance }: Assessment): Markup {
  const points = lastChance.filter(({ measure }) => measure.length > 0);
  if (points.length === 0) return NOTHING;
  const lists = points.map(
    ({ before, measure }) =>
      html`<h4><b>${BEFORE_WORDS[before]}</b>, ${measure.length} left:</h4><ul>${joined(measure.map((key) => html`<li>${measurementText(key)}</li>`))}</ul>`,
  );
  return html`<div class="last"><h3 class="hz">What can only be measured now</h3>${joined(lists)}</div>`;
}

function setOne(one: Next, assessment: Assessment): Markup {
  const settles = [...new Set(one.settles.map((id) => getCheckWords(id.split('@')[0] ?? id).title))];
  const hazards = one.hazard.map((key) => sentenceFor(MEASUREMENT_HAZARDS, key));
  const stops = one.stop.map((stop) => {
    const number = stop.step === null ? null : stepNumber(assessment, stop.step);
    return stop.step === null || number === null ? html`${stopText(stop)}` : linkToStep(stop.step, `${stopText(stop)}, step ${number}`);
  });
  const before = one.before === null ? '' : ` (${BEFORE_WORDS[one.before]})`;
  return html`<li><b>${measurementText(one.measure, one.about)}${before}.</b> ${settles.length === 0 ? '' : `Settles: ${settles.join(', ')}. `}${prospectText(one)}${hazards.length === 0 ? NOTHING : html`<span class="small">Hazard: ${hazards.join(', ')}.</span>`}${stops.length === 0 ? NOTHING : html`<span class="small"><b>Stop at</b> ${joined(stops, '; ')}.</span>`}</li>`;
}
