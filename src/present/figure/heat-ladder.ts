import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { type Markup, NOTHING } from '../markup/markup.ts';
import { STATE_WORDS } from '../words/case-words.ts';
import { getCheckWords } from '../words/check-words.ts';
import { findingLimit, findingValue } from '../words/finding-text.ts';
import { GRADE_WORDS } from '../words/grade-words.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { riseText } from '../words/rise-text.ts';
import { drawJudgedList, type JudgedRow, type ListSize, worstFirst } from './judged-list.ts';

const SCALED = 'scaledToHighestAmbient';
const AS_READ = 'asRead';

/** Temperatures that stand against a permitted one, the least margin first. */
export function heatFindings({ findings }: Pick<Assessment, 'findings'>): readonly Finding[] {
  return worstFirst(
    findings.filter(({ measured, limit }) => measured !== null && 'value' in measured && measured.unit === 'K' && limit?.at?.unit === 'K'),
  );
}

/** Each place with its margin line, which for a temperature is the permitted rise over the rise, both above the same ambient. */
export function drawHeatLadder(assessment: Assessment, size: ListSize): Markup {
  const findings = heatFindings(assessment);
  if (findings.length === 0) return NOTHING;
  const rows = findings.map((finding) => toRow(finding, assessment));
  const spoken = rows.map(({ name, detail, value, word }) => [name, value, ...detail, word].join(', ')).join('; ');
  return drawJudgedList(rows, size, `Temperatures, least margin first: ${spoken}`);
}

function toRow(finding: Finding, assessment: Assessment): JudgedRow {
  const grade = finding.limit === null ? '' : `, ${GRADE_WORDS[finding.limit.grade]}`;
  const state = finding.state === undefined ? '' : STATE_WORDS[finding.state];
  const taken = [state, ambientText(finding, assessment)].filter((part) => part !== '').join(', ');
  return {
    finding,
    name: finding.about ?? getCheckWords(finding.check).title,
    detail: [`${findingLimit(finding)}${grade}`, taken, riseText(finding)].filter((part) => part !== ''),
    value: findingValue(finding),
    word: outcomeText(finding),
  };
}

/** A part is taken at the highest ambient of the setting, what a hand touches as it was read; neither is worked out here. */
function ambientText({ notes }: Finding, { setting }: Assessment): string {
  if (notes.some(({ key }) => key === SCALED)) {
    const { highestAmbient: highest } = setting;
    return highest === undefined ? 'scaled to the highest ambient' : `scaled to ${highest.value} ambient`;
  }
  return notes.some(({ key }) => key === AS_READ) ? 'as read' : '';
}
