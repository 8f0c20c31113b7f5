import type { Assessment, Step } from '../../core/result/assessment.ts';
import { shareText, toBudget } from '../derivation/budget-line.ts';
import { sourceText } from '../derivation/source-text.ts';
import { formulaWithNumbers, rightSide, stepDoubt, stepName, stepResult } from '../derivation/step-text.ts';
import { STEP_KIND_WORDS } from '../words/case-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { NOTES } from '../words/notes.ts';
import { paint } from './ansi.ts';
import { columnsOf, padTo, toTerminal } from './terminal-text.ts';

const BAR = 20; // columns of a whole bar
const INDENT = '  ';

/** Steps as lines of text, each above the steps it uses, indented by depth; a step met again is named, not repeated. */
export function renderStepTree(assessment: Assessment, roots: readonly Step[], colour: boolean): string[] {
  const seen = new Set<string>();
  const lines: string[] = [];
  const visit = (step: Step, depth: number): void => {
    const indent = INDENT.repeat(depth);
    if (seen.has(step.id)) {
      lines.push(
        `${indent}${toTerminal(`${stepName(step, assessment)} = ${stepResult(step)}`)} ${paint(`(above: ${toTerminal(step.id)})`, 'quiet', colour)}`,
      );
      return;
    }
    seen.add(step.id);
    lines.push(...renderStep(step, assessment, colour).map((line) => `${indent}${line}`));
    for (const { step: used } of step.uses) {
      const next = assessment.steps.find(({ id }) => id === used);
      if (next === undefined) lines.push(`${indent}${INDENT}${toTerminal(used)}: not in this assessment`);
      else visit(next, depth + 1);
    }
  };
  for (const root of roots) visit(root, 0);
  return lines;
}

function renderStep(step: Step, assessment: Assessment, colour: boolean): string[] {
  const formula = step.formula === null ? undefined : assessment.formulas[step.formula];
  const numbers = formulaWithNumbers(step, assessment);
  const symbol = step.symbol ?? formula?.symbol ?? '';
  const right = [...(formula === undefined ? [] : [rightSide(formula.text)]), ...(numbers === null ? [] : [numbers]), stepResult(step)];
  const equation = right.map((side, index) => {
    const text = toTerminal(`${symbol === '' ? '' : `${index === 0 ? symbol : ' '.repeat(columnsOf(symbol))} `}= ${side}`);
    return `${INDENT}${index === right.length - 1 ? paint(text, 'bold', colour) : text}`;
  });
  const doubt = stepDoubt(step);
  const { lines, left } = toBudget(step);
  const longest = Math.max(0, ...lines.map(({ words }) => words.length));
  const budget = lines.map(
    ({ words, amount, share }) => `${INDENT}${INDENT}${padTo(words, longest)}  ${padTo(bar(share), BAR)}  ${shareText(share)}  ${amount}`,
  );
  const told = [
    ...(doubt === '' ? [] : [`${INDENT}${doubt}`]),
    ...(budget.length === 0
      ? []
      : [`${INDENT}uncertainty from`, ...budget, ...(left === 0 ? [] : [`${INDENT}${INDENT}and ${left} smaller`])]),
    ...(step.source === null ? [] : [`${INDENT}source: ${sourceText(step.source)}`]),
    ...(step.field === undefined ? [] : [`${INDENT}read from: ${step.field}`]),
    ...step.notes.map(({ key, args }) => `${INDENT}remark: ${sentenceFor(NOTES, key, args)}`),
  ].map(toTerminal);
  return [
    `${toTerminal(stepName(step, assessment))}  ${paint(`${STEP_KIND_WORDS[step.kind]}, ${toTerminal(step.id)}`, 'quiet', colour)}`,
    ...equation,
    ...told,
  ];
}

function bar(share: number | null): string {
  if (share === null) return '?';
  return '█'.repeat(Math.max(share > 0 ? 1 : 0, Math.round(Math.min(1, Math.max(0, share)) * BAR)));
}
