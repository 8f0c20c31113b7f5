import type { Assessment, Finding, Limit } from '../../core/result/assessment.ts';
import { type Markup, NOTHING } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { findingValue } from '../words/finding-text.ts';
import { GRADE_WORDS } from '../words/grade-words.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { drawJudgedList, type JudgedRow, type ListSize, worstFirst } from './judged-list.ts';

const WAYS: Readonly<Record<string, string>> = { 'shock/clearance': 'through air', 'shock/creepage': 'over the surface' };
const MILLIMETRES = 'millimetres';

/** Pairs of conductors whose distance is judged, worst ratio first. */
export function distanceFindings({ findings }: Pick<Assessment, 'findings'>): readonly Finding[] {
  return worstFirst(findings.filter(({ check, about }) => Object.hasOwn(WAYS, check) && about !== null));
}

/** Each pair with its margin line: the long stroke is what decides, the short one basic insulation; all in millimetres. */
export function drawDistanceList(assessment: Assessment, size: ListSize): Markup {
  const findings = distanceFindings(assessment);
  if (findings.length === 0) return NOTHING;
  return drawJudgedList(findings.map(toRow), size, `Distances, worst ratio first: ${findings.map(spoken).join('; ')}`);
}

function toRow(finding: Finding): JudgedRow {
  const limits = [finding.limit, ...finding.others.filter(({ name }) => name === 'basic' && finding.limit?.name !== 'basic')];
  const asked = limits.flatMap((limit) => (limit === null ? [] : [strokeText(limit)])).join(', ');
  const grade = finding.limit === null ? '' : GRADE_WORDS[finding.limit.grade];
  return {
    finding,
    name: finding.about ?? '',
    detail: [WAYS[finding.check] ?? '', ...(asked === '' ? [] : [asked, grade])].reduce<string[]>(gather, []),
    value: findingValue(finding),
    word: outcomeText(finding),
  };
}

/** The way and the limits on one line, the grade behind them. */
function gather(lines: string[], part: string, index: number): string[] {
  const LAST = 2;
  if (index === LAST && lines.length > 0) return [...lines.slice(0, -1), `${lines.at(-1)}, ${part}`];
  return part === '' ? lines : [...lines, part];
}

function strokeText({ name, at }: Limit): string {
  return at === undefined ? name : `${name} ${amountText(at, MILLIMETRES)}`;
}

function spoken(finding: Finding): string {
  const asked = finding.limit === null ? '' : `, ${strokeText(finding.limit)}`;
  return `${finding.about ?? ''} ${WAYS[finding.check] ?? ''} ${findingValue(finding)}${asked}, ${outcomeText(finding)}`;
}
