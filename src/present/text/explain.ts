import { closest } from 'fastest-levenshtein';
import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import type { Assessment, Finding, Step } from '../../core/result/assessment.ts';
import { sourcePlace, stepsOf } from '../derivation/source-text.ts';
import { needsConditions } from '../report/chapter.ts';
import { getCheckWords } from '../words/check-words.ts';
import { underText } from '../words/condition-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { decisionText, findingName, findingValue, isStruck } from '../words/finding-text.ts';
import { GRADE_WORDS } from '../words/grade-words.ts';
import { namedLimitText } from '../words/limit-words.ts';
import { NOTES } from '../words/notes.ts';
import { riseText } from '../words/rise-text.ts';
import { paint } from './ansi.ts';
import { renderStepTree } from './step-tree.ts';
import { toTerminal } from './terminal-text.ts';
import { OUTCOME_PAINTS, TEXT_MARKS } from './text-marks.ts';

export interface ExplainOptions {
  readonly colour: boolean;
}

/** Where one number comes from: its formula with the numbers, its doubt, its source, and the same of all it uses, down to the readings. */
export function explainStep(assessment: Assessment, stepId: string, { colour }: ExplainOptions): string | Refusal {
  const step = assessment.steps.find(({ id }) => id === stepId);
  if (step === undefined) return noSuch(stepId, 'the id of a step in this assessment', assessment);
  return `${renderStepTree(assessment, [step], colour).join('\n')}\n`;
}

/** The same for every finding of a check, or for one finding, with question, limit and decision above. */
export function explainCheck(
  assessment: Assessment,
  checkOrFindingId: string,
  { colour }: ExplainOptions = { colour: false },
): string | Refusal {
  const findings = assessment.findings.filter(({ id, check }) => id === checkOrFindingId || check === checkOrFindingId);
  if (findings.length === 0) return noSuch(checkOrFindingId, 'the id of a check or of a finding in this assessment', assessment);
  return `${findings.map((finding) => renderFinding(assessment, finding, colour)).join('\n\n')}\n`;
}

/** The nearest id of any kind is offered: a person may have named a check where a step was asked for. */
function noSuch(id: string, expected: string, { steps, findings }: Assessment): Refusal {
  const known = [...steps.map((step) => step.id), ...findings.flatMap((finding) => [finding.check, finding.id])];
  const nearest = known.length === 0 ? undefined : closest(id, known);
  return refuse('no-such-step', toTerminal(id), expected, nearest === undefined ? {} : { suggestion: nearest });
}

function renderFinding(assessment: Assessment, finding: Finding, colour: boolean): string {
  const mark = paint(TEXT_MARKS[finding.outcome], OUTCOME_PAINTS[finding.outcome], colour);
  const { question } = getCheckWords(finding.check);
  const value = findingValue(finding);
  const under = needsConditions(finding.check) ? underText(finding.under) : '';
  const limits = [
    ...(finding.limit === null ? [] : [{ title: 'limit', limit: finding.limit }]),
    ...finding.others.map((limit) => ({ title: 'also', limit })),
  ];
  const lines = [
    `${mark} ${paint(toTerminal(findingName(finding)), 'bold', colour)}  ${paint(toTerminal(finding.id), 'quiet', colour)}`,
    ...(question === '' ? [] : [`  ${question}`]),
    ...(value === '' ? [] : [`  found     ${value}${isStruck(finding) ? ' (cannot count)' : ''}`]),
    ...limits.map(
      ({ title, limit }) =>
        `  ${title.padEnd('found     '.length)}${namedLimitText(limit, finding.show)}, ${GRADE_WORDS[limit.grade]}: ${sourcePlace(limit.source)}`,
    ),
    ...(riseText(finding) === '' ? [] : [`  rise      ${riseText(finding).replace(/^rise /, '')}`]),
    `  decision  ${decisionText(finding)}`,
    ...(under === '' ? [] : [`  under     ${under}`]),
    ...finding.notes.map(({ key, args }) => `  remark    ${sentenceFor(NOTES, key, args)}`),
    ...(finding.fields.length === 0 ? [] : [`  evidence  ${finding.fields.join(', ')}`]),
  ].map((line, index) => (index === 0 ? line : toTerminal(line)));
  const steps = stepsOf(finding).flatMap(({ step }): Step[] => assessment.steps.filter(({ id }) => id === step));
  return steps.length === 0
    ? lines.join('\n')
    : [...lines, '', ...renderStepTree(assessment, steps, colour).map((line) => `  ${line}`)].join('\n');
}
