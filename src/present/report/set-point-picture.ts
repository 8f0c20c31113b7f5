import type { Assessment } from '../../core/result/assessment.ts';
import { stepNumber } from '../derivation/step-number.ts';
import { drawSetPointSpread, SPREAD_NARROW, SPREAD_WIDE } from '../figure/set-point-spread.ts';
import { html, NOTHING } from '../markup/markup.ts';
import { SPREAD_WORDS } from '../words/circuit-words.ts';
import type { FigurePart } from './figure-part.ts';
import { linkToStep } from './report-parts.ts';

/** How far the tolerances of the feedback parts let each output stray; none where no tolerance is known. */
export function spreadFigures(assessment: Assessment): readonly FigurePart[] {
  const spreads = assessment.circuit?.spreads ?? [];
  const [first] = spreads;
  if (first === undefined) return [];
  const number = stepNumber(assessment, first.step);
  const origin = number === null ? NOTHING : html` ${linkToStep(first.step, SPREAD_WORDS.origin(number))}.`;
  return [
    {
      wide: drawSetPointSpread(spreads, SPREAD_WIDE),
      narrow: drawSetPointSpread(spreads, SPREAD_NARROW),
      title: SPREAD_WORDS.title,
      caption: html`${SPREAD_WORDS.caption(first.draws)}${origin}`,
    },
  ];
}
