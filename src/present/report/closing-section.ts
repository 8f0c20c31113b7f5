import type { Assessment } from '../../core/result/assessment.ts';
import { stepNumber } from '../derivation/step-number.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { exhibitKindText } from '../words/case-words.ts';
import { energyText, residualText } from '../words/energy-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { CAUTIONS, DO_NOT_REPEAT, INVENTED, ONE_SAMPLE, ONE_SAMPLE_LONG, RIGHT_OF_REPLY } from '../words/fixed-sentences.ts';
import { WARNINGS } from '../words/notes.ts';
import { fieldWords, linkToStep, type ReportExtras } from './report-parts.ts';

/** Evidence that is kept although nothing here reads it, and slow results that no longer match. */
export function setUnjudged({ unjudged, stale }: Assessment): Markup {
  if (unjudged.length === 0 && stale.length === 0) return NOTHING;
  const kept = unjudged.map(
    ({ exhibit, kind }) => html`<li>${exhibitKindText(kind)}, ${exhibit}: kept, but no check of this version reads it</li>`,
  );
  const old = stale.map(
    ({ computed, recipe }) => html`<li>${recipe}, ${computed}: computed from evidence that has changed since; not used</li>`,
  );
  return html`<ul class="dots">${joined([...kept, ...old])}</ul>`;
}

export function setWarnings({ warnings }: Assessment, extras: ReportExtras): Markup {
  if (warnings.length === 0) return NOTHING;
  return html`<ul class="dots">${joined(warnings.map(({ key, at, args }) => html`<li>${sentenceFor(WARNINGS, key, args)}${at === '' ? '' : ` (${fieldWords(at, extras)})`}</li>`))}</ul>`;
}

export function setCautions(assessment: Assessment): Markup {
  const left = (assessment.residuals ?? []).map(
    (residual) => html`<li>${residualText(residual)}${stepLink(assessment, residual.first.step)}</li>`,
  );
  return html`<ul class="caution"><li>${energyText(assessment)}</li>${joined(left)}${joined(CAUTIONS.map((caution) => html`<li>${caution}</li>`))}<li>${DO_NOT_REPEAT}</li></ul>`;
}

function stepLink(assessment: Assessment, step: string): Markup {
  const number = stepNumber(assessment, step);
  return number === null ? NOTHING : html` (${linkToStep(step, `step ${number}`)})`;
}

/** What this document is, who can answer it, and what it was made from. */
export function setStatement(assessment: Assessment): Markup {
  const { tool, rules } = assessment;
  const about = assessment.case;
  return html`<p class="txt"><b>${ONE_SAMPLE}</b> ${ONE_SAMPLE_LONG}</p>${about.invented ? html`<p class="txt"><b>${INVENTED}</b></p>` : NOTHING}<p class="txt">Right of reply. ${RIGHT_OF_REPLY}</p>
<dl class="kv"><dt>case</dt><dd class="mono">${about.id}, sha256 ${about.sha256}</dd><dt>tool</dt><dd class="mono">${tool}</dd><dt>rules</dt><dd class="mono">${rules.version}, sha256 ${rules.sha256}</dd><dt>format</dt><dd class="mono">${assessment.format}</dd></dl>
<p class="small">The same version of the tool gives the same bytes for the same case.</p>`;
}
