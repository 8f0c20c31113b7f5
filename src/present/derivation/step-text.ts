import type { Assessment, Step } from '../../core/result/assessment.ts';
import { amountText, printAmount } from '../words/amount-text.ts';
import { getCheckWords } from '../words/check-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { foundText } from '../words/found-words.ts';
import { STEP_NAMES } from '../words/step-names.ts';

/** What a step is called: what its formula means, its check's title, or the name it carries. */
export function stepName(step: Step, assessment: Assessment): string {
  const formula = step.formula === null ? undefined : assessment.formulas[step.formula];
  if (formula !== undefined) return formula.means;
  const check = getCheckWords(step.name);
  return check.question === '' ? sentenceFor(STEP_NAMES, step.name) : check.title;
}

/** The result: a quantity, a word, or that there is none. */
export function stepResult(step: Step): string {
  if (step.value === null || step.unit === null) return step.word === undefined ? 'no value' : foundText(step.word);
  const { value, unit, u, side, show } = step;
  const text = amountText({ value, unit, u, ...(side === undefined ? {} : { side }) }, show);
  return step.word === undefined ? text : `${text}, ${step.word}`;
}

/** What is known about the doubt of a step, beside its result. */
export function stepDoubt(step: Step): string {
  if (step.value === null) return '';
  if (step.side !== undefined) return 'a bound only';
  if (step.u === null) return 'uncertainty not known';
  return step.u === 0 ? 'taken as exact' : '';
}

const DIGITS_IN_A_FORMULA = 5; // enough to follow the arithmetic by hand
/** Kelvin stay kelvin where they are multiplied and divided: a formula does not work in degrees Celsius. */
const AS_CALCULATED: Readonly<Record<string, string>> = { K: 'K' };

function numberInFormula(step: Step): string {
  if (step.value === null || step.unit === null) return step.word ?? '?';
  const calculated = AS_CALCULATED[step.unit];
  if (calculated !== undefined) return `${Number(step.value.toPrecision(DIGITS_IN_A_FORMULA))}\u00a0${calculated}`;
  // as many digits as the uncertainty allows, so that differences of near numbers can be followed
  const { value, unit, u } = step;
  const printed = printAmount({ value, unit, u }, step.show);
  return `${printed.number}${printed.unit === '' ? '' : `\u00a0${printed.unit}`}`;
}

// what may stand inside a symbol: letters, digits, lowered digits; a raised two or three is a power and ends it
const WORD_SIGN = String.raw`\p{L}\p{Nd}_₀-₉`;

/** The right side of a formula's text: "I = 2π · f · C · V" gives "2π · f · C · V". */
export function rightSide(text: string): string {
  const equals = text.indexOf('=');
  return equals === -1 ? text : text.slice(equals + 1).trim();
}

/** Text cut into symbols of the formula and what stands between them: every second piece is a symbol. */
export function splitAtSymbols(text: string, symbols: readonly string[]): readonly string[] {
  return symbols.length === 0 ? [text] : text.split(new RegExp(symbolPattern(symbols), 'gu'));
}

function symbolPattern(symbols: readonly string[]): string {
  const longestFirst = [...symbols].sort((a, b) => b.length - a.length).map((symbol) => symbol.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return `(?<![${WORD_SIGN}])(${longestFirst.join('|')})(?![${WORD_SIGN}'’′])`;
}

/** The same with the numbers that went in; null when the formula's text is not known or nothing could be put in. */
export function formulaWithNumbers(step: Step, assessment: Assessment): string | null {
  const formula = step.formula === null ? undefined : assessment.formulas[step.formula];
  if (formula === undefined) return null;
  const bySymbol = new Map<string, string>();
  for (const use of step.uses) {
    const used = assessment.steps.find(({ id }) => id === use.step);
    if (used !== undefined && use.symbol !== '') bySymbol.set(use.symbol, numberInFormula(used));
  }
  if (bySymbol.size === 0) return null;
  const found = new RegExp(`${symbolPattern([...bySymbol.keys()])}([²³^])?`, 'gu');
  return rightSide(formula.text).replace(found, (_found, symbol: string, power: string | undefined) => {
    const number = bySymbol.get(symbol) ?? symbol;
    const whole = power !== undefined || number.startsWith('\u2212') ? `(${number})` : number;
    return `${whole}${power ?? ''}`;
  });
}
