import type { Assessment, Finding, Step } from '../../core/result/assessment.ts';
import { NOT_KNOWN, shareText, toBudget } from '../derivation/budget-line.ts';
import { publicationOf } from '../derivation/publications.ts';
import { sourcePlace, stepsOf } from '../derivation/source-text.ts';
import { stepNumber } from '../derivation/step-number.ts';
import { formulaWithNumbers, rightSide, splitAtSymbols, stepDoubt, stepName, stepResult } from '../derivation/step-text.ts';
import { toAnchor } from '../markup/anchor.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { STEP_KIND_WORDS } from '../words/case-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { findingName } from '../words/finding-text.ts';
import { NOTES } from '../words/notes.ts';
import { setGrade } from './quantity.ts';
import { fieldWords, linkToFinding, linkToStep, type ReportExtras } from './report-parts.ts';
import { setSubscripts, setSymbol } from './symbol.ts';

/** Every step, each after those it uses, linked both ways: down to what it uses, up to what uses it and to the findings. */
export function setDerivation(assessment: Assessment, extras: ReportExtras): Markup {
  const usedBy = new Map<string, Step[]>();
  for (const step of assessment.steps) for (const { step: used } of step.uses) usedBy.set(used, [...(usedBy.get(used) ?? []), step]);
  const decides = new Map<string, Finding[]>();
  for (const finding of assessment.findings)
    for (const { step } of stepsOf(finding)) decides.set(step, [...(decides.get(step) ?? []), finding]);
  if (assessment.steps.length === 0) return NOTHING;
  const steps = assessment.steps.map((step) =>
    setStep(step, assessment, extras, { steps: usedBy.get(step.id) ?? [], findings: decides.get(step.id) ?? [] }),
  );
  return html`<div class="steps">${joined(steps)}</div>`;
}

interface Users {
  readonly steps: readonly Step[];
  readonly findings: readonly Finding[];
}

function setStep(step: Step, assessment: Assessment, extras: ReportExtras, users: Users): Markup {
  const doubt = stepDoubt(step);
  const notes = step.notes.map(({ key, args }) => html`<li>${sentenceFor(NOTES, key, args)}</li>`);
  const remarks = notes.length === 0 ? NOTHING : html`<ul class="remarks">${joined(notes)}</ul>`;
  const links = setLinks(step, assessment, extras, users);
  const anchor = toAnchor('step', step.id);
  const source = setSource(step, assessment);
  const name = html`<span class="no">${stepNumber(assessment, step.id)}</span> ${stepName(step, assessment)}`;
  if (step.uses.length === 0 && step.formula === null) {
    const symbol = step.symbol === null ? NOTHING : html`${setSymbol(step.symbol)} = `;
    const told = [STEP_KIND_WORDS[step.kind], step.id, doubt, budgetInLine(step)].filter((part) => part !== '').join(' · ');
    return html`<article class="step leaf" id="${anchor}" tabindex="-1"><h3>${name}: ${symbol}${stepResult(step)}</h3><p class="tags">${told}${source === NOTHING ? NOTHING : html` · ${source}`}</p>${links}${remarks}</article>\n`;
  }
  const budget = toBudget(step).lines.length === 1 ? NOTHING : setBudget(step);
  const inLine = budgetInLine(step);
  const told = [STEP_KIND_WORDS[step.kind], doubt, budget === NOTHING ? inLine : ''].filter((part) => part !== '').join(' · ');
  const onPaper = budget === NOTHING ? NOTHING : html`<span class="budgetline"> · ${inLine}</span>`; // bars on a screen only
  return html`<article class="step" id="${anchor}" tabindex="-1"><h3>${name}</h3>
${setEquation(step, assessment)}<p class="tags">${told}${onPaper}<span class="screen"> · ${step.id}</span>${source === NOTHING ? NOTHING : html` · ${source}`}</p>${budget}${links}${remarks}</article>\n`;
}

const MOST_IN_LINE = 3;

/** The budget of a reading in a few words; a derived step has room for bars. */
function budgetInLine(step: Step): string {
  const { lines, left } = toBudget(step);
  if (step.u === null) {
    // of what is not known only the cause says anything; the shares of the rest cannot be given
    const causes = lines.filter(({ amount }) => amount === NOT_KNOWN).map(({ words }) => words);
    return causes.length === 0 ? '' : `because of: ${causes.join(', ')}`;
  }
  const parts = lines.slice(0, MOST_IN_LINE).map(({ words, share }) => `${words} ${shareText(share)}`);
  const smaller = left + lines.length - parts.length;
  return parts.length === 0 ? '' : `uncertainty from ${parts.join(', ')}${smaller === 0 ? '' : ` and ${smaller} smaller`}`;
}

/** Symbol line, number line, result line, aligned on the equals sign. */
function setEquation(step: Step, assessment: Assessment): Markup {
  const formula = step.formula === null ? undefined : assessment.formulas[step.formula];
  const numbers = formulaWithNumbers(step, assessment);
  const symbol = step.symbol ?? formula?.symbol ?? null;
  const lines = [
    formula === undefined ? null : setFormula(rightSide(formula.text), formula.inputs),
    numbers === null ? null : html`${numbers}`,
    html`<span class="res">${stepResult(step)}</span>`,
  ].filter((line) => line !== null);
  const left = symbol === null ? html`<span></span>` : setSymbol(symbol);
  return html`<div class="eq">${joined(lines.map((line, index) => html`${index === 0 ? left : html`<span></span>`}<span>${symbol === null && index === 0 ? '' : '='}</span><span>${line}</span>`))}</div>`;
}

/** The formula with its own symbols in italics; whatever else stands there stays upright. */
function setFormula(text: string, inputs: readonly { readonly symbol: string }[]): Markup {
  const pieces = splitAtSymbols(
    text,
    inputs.map(({ symbol }) => symbol),
  );
  return joined(pieces.map((piece, index) => (index % 2 === 0 ? setSubscripts(piece) : setSymbol(piece))));
}

const BAR = 96;
const BAR_HEIGHT = 7;

function setBudget(step: Step): Markup {
  const { lines, left } = toBudget(step);
  if (lines.length === 0) return NOTHING;
  const rows = lines.map(({ words, amount, share }) => {
    const bar =
      share === null
        ? NOTHING
        : html`<svg width="${BAR}" height="${BAR_HEIGHT}" viewBox="0 0 ${BAR} ${BAR_HEIGHT}" aria-hidden="true"><rect x="0" y="0" width="${c(Math.max(1, BAR * Math.min(1, Math.max(0, share))))}" height="${BAR_HEIGHT}"/></svg>`;
    return html`<div class="bl"><span>${words}</span><span>${bar}</span><span class="num">${amount}</span><span class="num">${shareText(share)}</span></div>`;
  });
  return html`<div class="budget">${joined(rows)}${left === 0 ? NOTHING : html`<div class="bl"><span>and ${left} smaller</span></div>`}</div>`;
}

/** Number of the publication, and the place in it; the list of sources has the rest. */
function setSource({ source }: Step, assessment: Assessment): Markup {
  if (source === null) return NOTHING;
  const publication = publicationOf(assessment, source);
  const place =
    publication === undefined
      ? html`${sourcePlace(source)}`
      : html`<a class="from" href="#${toAnchor('source', String(publication.number))}">[${publication.number}]</a> ${source.place}`;
  return html`${place} ${setGrade(source.grade)}`;
}

/** Down to what it uses, by number, and up to what uses it; on paper the numbers lead down and the rest is left out. */
function setLinks(step: Step, assessment: Assessment, extras: ReportExtras, users: Users): Markup {
  const uses = step.uses.map(({ step: id, symbol }) => {
    const number = stepNumber(assessment, id);
    const isInput = step.formula !== null && assessment.formulas[step.formula]?.inputs.some((input) => input.symbol === symbol) === true;
    const used = assessment.steps.find((other) => other.id === id);
    const name =
      used === undefined
        ? html`${id}`
        : html`<span class="screen">${stepName(used, assessment)}, </span>${linkToStep(id, `step ${number ?? ''}`)}`;
    return isInput ? html`${setSymbol(symbol)}: ${name}` : name;
  });
  const above = [
    ...users.findings.map((finding) => linkToFinding(finding, findingName(finding))),
    ...users.steps.map((other) => linkToStep(other.id, `${stepName(other, assessment)}, step ${stepNumber(assessment, other.id) ?? ''}`)),
  ];
  const field =
    step.field === undefined || (step.field === step.id && extras.fields?.[step.field] === undefined)
      ? NOTHING
      : html`<p class="tags">Read from: ${fieldWords(step.field, extras)}</p>`;
  return html`${field}${uses.length === 0 ? NOTHING : html`<p class="tags">Uses ${joined(uses, '; ')}</p>`}${above.length === 0 ? NOTHING : html`<p class="tags users">Used by ${joined(above, '; ')}</p>`}`;
}
