import type { Assessment, Finding, SoakCurve } from '../../core/result/assessment.ts';
import { stepNumber } from '../derivation/step-number.ts';
import { drawSoakCurve, SOAK_NARROW, SOAK_WIDE } from '../figure/soak-curve.ts';
import { html, type Markup, NOTHING } from '../markup/markup.ts';
import { STATE_WORDS } from '../words/case-words.ts';
import { soakSentence } from '../words/soak-words.ts';
import type { FigurePart } from './figure-part.ts';
import { linkToStep } from './report-parts.ts';

// said under the first figure of its kind
const KEY =
  ' Dots: readings, as means of short stretches. Dashed: the fitted curve. Band: the end, 95 %, with meter and room in it. Grey ground: not read.';

/** For every logged place its curve, where it is heading and the limits it was held against. */
export function soakFigures(assessment: Assessment): readonly FigurePart[] {
  return assessment.soaks.map((soak, index) => ({
    ...drawOnce(soak, assessment),
    title: `Soak, ${soak.name}`,
    caption: html`${soakSentence(soak)} ${capital(STATE_WORDS[soak.state])}, from ${soak.exhibit}.${index === 0 ? KEY : ''}${setOrigin(soak, assessment)}`,
  }));
}

interface Drawing {
  readonly own: readonly (Finding | undefined)[];
  readonly wide: Markup;
  readonly narrow: Markup;
}

const DRAWN = new WeakMap<SoakCurve, Drawing>();

/** A curve with the findings it names, drawn once for as long as both are the same. */
function drawOnce(soak: SoakCurve, { findings }: Assessment): Pick<Drawing, 'wide' | 'narrow'> {
  const own = soak.limits.map(({ finding }) => findings.find(({ id }) => id === finding));
  const known = DRAWN.get(soak);
  if (known?.own.every((finding, index) => finding === own[index]) === true) return { wide: known.wide, narrow: known.narrow };
  const seen = { findings: own.filter((finding) => finding !== undefined) };
  const drawn = { wide: drawSoakCurve(soak, seen, SOAK_WIDE), narrow: drawSoakCurve(soak, seen, SOAK_NARROW) };
  DRAWN.set(soak, { own, ...drawn });
  return drawn;
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

function setOrigin({ fit }: SoakCurve, assessment: Assessment): Markup {
  const number = fit === null ? null : stepNumber(assessment, fit.step);
  return fit === null || number === null ? NOTHING : html` ${linkToStep(fit.step, `Origin of the end, step ${number}`)}.`;
}
