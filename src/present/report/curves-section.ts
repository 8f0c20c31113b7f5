import type { Assessment, Curve } from '../../core/result/assessment.ts';
import { curveName, drawLoadCurve, LOAD_CURVE_NARROW, LOAD_CURVE_WIDE, loadCurveSentence } from '../figure/load-curve.ts';
import { html, joined, type Markup } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { ORDER_WORDS, SENSE_WORDS } from '../words/case-words.ts';
import { linkToStep } from './report-parts.ts';

/** Every sweep that was judged, drawn once for a wide and once for a narrow page. */
export function setCurves(assessment: Assessment): Markup {
  return joined(assessment.curves.map((curve, index) => setCurve(curve, index + 1, assessment)));
}

function setCurve(curve: Curve, number: number, assessment: Assessment): Markup {
  const mains = curve.mains === null ? '' : ` at ${amountText({ value: curve.mains, unit: 'V', u: null })} mains`;
  const frequency =
    curve.frequency === null || curve.mains === null ? '' : `, ${amountText({ value: curve.frequency, unit: 'Hz', u: null })}`;
  const held =
    curve.held !== null && assessment.steps.some(({ id }) => id === curve.held)
      ? html` ${linkToStep(curve.held, 'Origin of the current held')}.`
      : html``;
  const how = `${SENSE_WORDS[curve.sense]}, ${ORDER_WORDS[curve.order]}, from exhibit ${curve.exhibit}`;
  return html`<figure><div class="wide">${drawLoadCurve(curve, assessment, LOAD_CURVE_WIDE)}</div><div class="narrow">${drawLoadCurve(curve, assessment, LOAD_CURVE_NARROW)}</div>
<figcaption><b>Figure ${number}. ${curveName(curve, assessment)}${mains}${frequency}:</b> ${loadCurveSentence(curve, assessment)} Grey: the claim inside its voltage window. Dots: readings with their 95 % interval; ${how}.${held}</figcaption></figure>\n`;
}
