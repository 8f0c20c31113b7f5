import type { Assessment, Curve } from '../../core/result/assessment.ts';
import { stepNumber } from '../derivation/step-number.ts';
import { curveName, curvesByLevel } from '../figure/curve-names.ts';
import { drawEfficiencyCurve, EFFICIENCY_NARROW, EFFICIENCY_WIDE, efficiencySentence } from '../figure/efficiency-curve.ts';
import { drawLoadCurve, LOAD_CURVE_NARROW, LOAD_CURVE_WIDE, loadCurvesSentence } from '../figure/load-curve.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { ORDER_WORDS, SENSE_WORDS } from '../words/case-words.ts';
import type { FigurePart } from './figure-part.ts';
import { linkToStep } from './report-parts.ts';

// said under the first figure of its kind
const LOAD_KEY = ' Grey: the claim inside its voltage window. Dots: readings with their 95 % interval.';
const EFFICIENCY_KEY =
  ' Dots: output over input power at each reading. Rings: the loads that are averaged. Line: the least average. Loads lighter than the lightest ring may lie below the axis.';

/** For every port and level its sweeps in one load curve, and the efficiency where input power was read. */
export function loadFigures(assessment: Assessment): readonly FigurePart[] {
  const levels = curvesByLevel(assessment);
  const loads = levels.map((curves, index) => loadFigure(curves, assessment, index === 0 ? LOAD_KEY : ''));
  const withInput = levels.filter((curves) => drawEfficiencyCurve(curves, assessment, EFFICIENCY_WIDE).markup !== '');
  return levels.flatMap((curves, index) => {
    const place = withInput.indexOf(curves);
    const efficiency = place === -1 ? [] : [efficiencyFigure(curves, assessment, place === 0 ? EFFICIENCY_KEY : '')];
    return [...loads.slice(index, index + 1), ...efficiency];
  });
}

function loadFigure(curves: readonly [Curve, ...Curve[]], assessment: Assessment, key: string): FigurePart {
  const [first] = curves;
  const alone = curves.length === 1 ? mainsText(first) : '';
  const ways = [...new Set(curves.map((curve) => `${SENSE_WORDS[curve.sense]}, ${ORDER_WORDS[curve.order]}`))];
  const how = `${ways.join('; ')}, from ${curves.map(({ exhibit }) => exhibit).join(', ')}`;
  return {
    wide: drawLoadCurve(curves, assessment, LOAD_CURVE_WIDE),
    narrow: drawLoadCurve(curves, assessment, LOAD_CURVE_NARROW),
    title: `${curveName(first, assessment)}${alone}`,
    caption: html`${loadCurvesSentence(curves, assessment)} ${how.charAt(0).toUpperCase()}${how.slice(1)}.${key}${joined(curves.map((curve) => setHeldOrigin(curve, assessment)))}`,
  };
}

function mainsText({ mains, frequency }: Curve): string {
  if (mains === null) return '';
  const cycles = frequency === null ? '' : `, ${amountText({ value: frequency, unit: 'Hz', u: null })}`;
  return ` at ${amountText({ value: mains, unit: 'V', u: null })} mains${cycles}`;
}

function setHeldOrigin({ held }: Curve, assessment: Assessment): Markup {
  const number = held === null ? null : stepNumber(assessment, held);
  return held === null || number === null ? NOTHING : html` ${linkToStep(held, `Origin of the current held, step ${number}`)}.`;
}

function efficiencyFigure(curves: readonly [Curve, ...Curve[]], assessment: Assessment, key: string): FigurePart {
  return {
    wide: drawEfficiencyCurve(curves, assessment, EFFICIENCY_WIDE),
    narrow: drawEfficiencyCurve(curves, assessment, EFFICIENCY_NARROW),
    title: `Efficiency, ${curveName(curves[0], assessment)}`,
    caption: `${efficiencySentence(curves, assessment)}${key}`,
  };
}
