import type { Assessment, Next } from '../../core/result/assessment.ts';
import { stepNumber } from '../derivation/step-number.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { BEFORE_WORDS, MEASUREMENT_HAZARDS, measurementText, prospectText } from '../words/next-words.ts';
import { stopText } from '../words/stop-text.ts';
import { isShort } from './chapter.ts';
import { linkToStep } from './report-parts.ts';

const FIRST_ONES = 4; // of a short report, told on paper; all of them on a screen

/** What can only be measured now, then what to measure next: what it would settle, what can hurt, and where to stop. */
export function setNext(assessment: Assessment): Markup {
  const { next } = assessment;
  const hazards = sayOnce(next.map(setHazards), 'Hazards');
  const stops = sayOnce(
    next.map((one) => setStops(one, assessment)),
    'Stops',
  );
  const set = next.map((one, index) => setOne(one, [hazards[index] ?? NOTHING, stops[index] ?? NOTHING]));
  const later = next.length - FIRST_ONES;
  const then =
    later <= 0 || !isShort(assessment)
      ? NOTHING
      : html`<p class="small paper">${later} more would settle the rest of what was not examined; they stand in this report on a screen.</p>`;
  const steps = next.length === 0 ? NOTHING : html`<ol class="nexts">${joined(set)}</ol>${then}`;
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

/** What several measurements share is said at the first of them. */
function sayOnce(all: readonly Markup[], what: string): readonly Markup[] {
  return all.map((one, index) => {
    const first = all.findIndex(({ markup }) => markup === one.markup);
    return one.markup === '' || first === index ? one : html`<span class="small">${what} as in ${first + 1}.</span>`;
  });
}

function setHazards({ hazard }: Next): Markup {
  const hazards = hazard.map((key) => sentenceFor(MEASUREMENT_HAZARDS, key));
  return hazards.length === 0 ? NOTHING : html`<span class="small">Hazard: ${hazards.join(', ')}.</span>`;
}

function setStops({ stop }: Next, assessment: Assessment): Markup {
  const stops = stop.map((one) => {
    const number = one.step === null ? null : stepNumber(assessment, one.step);
    return one.step === null || number === null ? html`${stopText(one)}` : linkToStep(one.step, `${stopText(one)}, step ${number}`);
  });
  return stops.length === 0 ? NOTHING : html`<span class="small"><b>Stop at</b> ${joined(stops, '; ')}.</span>`;
}

function setOne(one: Next, dangers: readonly Markup[]): Markup {
  const settles = [...new Set(one.settles.map((id) => getCheckWords(id.split('@')[0] ?? id).title))];
  const before = one.before === null ? '' : ` (${BEFORE_WORDS[one.before]})`;
  return html`<li><b>${measurementText(one.measure, one.about)}${before}.</b> ${settles.length === 0 ? '' : `Settles: ${settles.join(', ')}. `}${prospectText(one)}${joined(dangers)}</li>`;
}
