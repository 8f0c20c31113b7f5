import type { Finding } from '../../core/result/assessment.ts';
import { drawMarginLine, MARGIN_LINE_ROW } from '../figure/margin-line.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { html } from '../markup/markup.ts';
import { chapterOf } from '../report/chapter.ts';
import { setMeasured } from '../report/quantity.ts';
import { measuredText } from '../words/amount-text.ts';
import { getCheckWords } from '../words/check-words.ts';
import { underText } from '../words/condition-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { decisionText, findingLimit, findingName, isStruck } from '../words/finding-text.ts';
import { GRADE_WORDS } from '../words/grade-words.ts';
import { NOTES } from '../words/notes.ts';
import { outcomeText } from '../words/outcome-words.ts';

/** One finding as the verdict column draws it. Members that end in `Svg` or `Html` are finished markup of our own making; all else is plain text. */
export interface FindingRow {
  readonly id: string;
  readonly check: string;
  readonly chapter: string;
  readonly hazard: string;
  readonly outcome: Finding['outcome'];
  readonly title: string;
  readonly about: string;
  readonly limit: string;
  readonly grade: string;
  readonly markSvg: string;
  readonly lineSvg: string;
  readonly valueHtml: string;
  readonly word: string;
  /** The row as one sentence, for ears. */
  readonly spoken: string;
  readonly question: string;
  readonly decision: string;
  readonly under: string;
  readonly remarks: readonly string[];
  /** Places of the case that decide it. */
  readonly fields: readonly string[];
  readonly step: string | null;
  readonly limitStep: string | null;
  /** Ratio to the limit, for sorting; null where there is none. */
  readonly margin: number | null;
}

const MARK = 11;

export function toFindingRow(finding: Finding): FindingRow {
  const { title, question } = getCheckWords(finding.check);
  const grade = finding.limit === null ? '' : GRADE_WORDS[finding.limit.grade];
  const value = finding.measured === null ? html`` : setMeasured(finding.measured, finding.show);
  const word = outcomeText(finding);
  const found = finding.measured === null ? '' : measuredText(finding.measured, finding.show);
  const limit = findingLimit(finding);
  return {
    id: finding.id,
    check: finding.check,
    chapter: chapterOf(finding.check),
    hazard: finding.hazard,
    outcome: finding.outcome,
    title,
    about: finding.about ?? '',
    limit,
    grade,
    markSvg: drawOutcomeMark(finding.outcome, MARK).markup,
    lineSvg: drawMarginLine(finding, MARGIN_LINE_ROW).markup,
    valueHtml: (isStruck(finding) ? html`<s class="refused">${value}</s>` : value).markup,
    word,
    spoken: [findingName(finding), found, limit, grade]
      .filter((part) => part !== '')
      .join(', ')
      .concat(`: ${word}.`),
    question,
    decision: decisionText(finding),
    under: underText(finding.under),
    remarks: finding.notes.map(({ key, args }) => sentenceFor(NOTES, key, args)),
    fields: finding.fields,
    step: finding.step,
    limitStep: finding.limit?.step ?? null,
    margin: finding.margin,
  };
}
