import type { Assessment, Step } from '../../core/result/assessment.ts';
import { shareText, toBudget } from '../derivation/budget-line.ts';
import { sourcePlace } from '../derivation/source-text.ts';
import { formulaWithNumbers, rightSide, splitAtSymbols, stepDoubt, stepName, stepResult } from '../derivation/step-text.ts';
import { html, joined } from '../markup/markup.ts';
import { setSubscripts, setSymbol } from '../report/symbol.ts';
import { STEP_KIND_WORDS } from '../words/case-words.ts';
import { fieldText } from '../words/field-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { GRADE_STROKES, GRADE_WORDS } from '../words/grade-words.ts';
import { NOTES } from '../words/notes.ts';
import { listWeakest } from './weakest-link.ts';

/** Where one number comes from: formula, the numbers put in, the result, what went in, doubt and source. `Html` members are finished markup. */
export interface Origin {
  readonly step: string;
  readonly name: string;
  readonly kind: string;
  readonly result: string;
  readonly doubt: string;
  readonly symbolHtml: string;
  readonly formulaHtml: string | null;
  readonly numbers: string | null;
  readonly inputs: readonly OriginInput[];
  readonly budget: readonly {
    readonly words: string;
    readonly amount: string;
    readonly share: number | null;
    readonly shareText: string;
  }[];
  readonly smaller: number;
  readonly source: {
    readonly place: string;
    readonly grade: string;
    readonly stroke: string;
    readonly alsoBy: readonly string[];
    readonly disagrees: readonly string[];
  } | null;
  readonly validity: string;
  /** The place of the case it was read from. */
  readonly field: string | null;
  readonly fieldWords: string;
  readonly weakest: { readonly grade: string; readonly stroke: string; readonly name: string } | null;
  readonly notes: readonly string[];
  /** Findings and numbers that stand on it. */
  readonly usedBy: readonly { readonly name: string; readonly step: string }[];
}

export interface OriginInput {
  readonly symbolHtml: string;
  readonly name: string;
  readonly result: string;
  readonly step: string;
  readonly field: string | null;
  readonly grade: string;
  readonly stroke: string;
}

/** Null when the Assessment has no such step. */
export function findOrigin(assessment: Assessment, id: string): Origin | null {
  const step = assessment.steps.find((one) => one.id === id);
  if (step === undefined) return null;
  const formula = step.formula === null ? undefined : assessment.formulas[step.formula];
  const symbol = step.symbol ?? formula?.symbol ?? null;
  const { lines, left } = toBudget(step);
  const weakest = listWeakest(assessment, step)[0];
  return {
    step: id,
    name: stepName(step, assessment),
    kind: STEP_KIND_WORDS[step.kind],
    result: stepResult(step),
    doubt: stepDoubt(step),
    symbolHtml: symbol === null ? '' : setSymbol(symbol).markup,
    formulaHtml: formula === undefined ? null : setFormula(rightSide(formula.text), formula.inputs),
    numbers: formulaWithNumbers(step, assessment),
    inputs: step.uses.flatMap((use) => toInput(use, assessment)),
    budget: lines.map(({ words, amount, share }) => ({ words, amount, share, shareText: shareText(share) })),
    smaller: left,
    source: step.source === null ? null : toSource(step.source),
    validity: formula?.validity ?? '',
    field: step.field ?? null,
    fieldWords: step.field === undefined ? '' : fieldText(step.field),
    weakest:
      weakest === undefined
        ? null
        : { grade: GRADE_WORDS[weakest.grade], stroke: GRADE_STROKES[weakest.grade], name: stepName(weakest.step, assessment) },
    notes: step.notes.map(({ key, args }) => sentenceFor(NOTES, key, args)),
    usedBy: assessment.steps
      .filter(({ uses }) => uses.some(({ step: used }) => used === id))
      .map((other) => ({ name: stepName(other, assessment), step: other.id })),
  };
}

function toSource(source: NonNullable<Step['source']>): NonNullable<Origin['source']> {
  return {
    place: sourcePlace(source),
    grade: GRADE_WORDS[source.grade],
    stroke: GRADE_STROKES[source.grade],
    alsoBy: source.alsoBy ?? [],
    disagrees: source.disagrees ?? [],
  };
}

function toInput(use: Step['uses'][number], assessment: Assessment): OriginInput[] {
  const step = assessment.steps.find(({ id }) => id === use.step);
  if (step === undefined) return [];
  return [
    {
      symbolHtml: use.symbol === '' ? '' : setSymbol(use.symbol).markup,
      name: stepName(step, assessment),
      result: stepResult(step),
      step: step.id,
      field: step.field ?? null,
      grade: step.source === null ? '' : GRADE_WORDS[step.source.grade],
      stroke: step.source === null ? '' : GRADE_STROKES[step.source.grade],
    },
  ];
}

function setFormula(text: string, inputs: readonly { readonly symbol: string }[]): string {
  const symbols = inputs.map(({ symbol }) => symbol);
  return joined(splitAtSymbols(text, symbols).map((piece, index) => (index % 2 === 0 ? setSubscripts(piece) : html`${setSymbol(piece)}`)))
    .markup;
}
