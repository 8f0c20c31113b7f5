import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { countOutcomes } from '../figure/portrait-rows.ts';
import { decidedText, findingName, getFinding } from '../words/finding-text.ts';
import { ONE_SAMPLE } from '../words/fixed-sentences.ts';
import { GRADE_PHRASES } from '../words/grade-words.ts';
import { LABORATORY_TITLE, laboratoryText } from '../words/laboratory-words.ts';
import { OUTCOME_WORDS, rungText } from '../words/outcome-words.ts';
import { paint } from './ansi.ts';
import { columnsOf, hang, wrapText } from './terminal-text.ts';
import { renderHalves } from './text-halves.ts';
import { OUTCOME_PAINTS, TEXT_MARKS } from './text-marks.ts';
import { renderLastChance, renderNext } from './text-next.ts';

export interface SummaryOptions {
  readonly colour: boolean;
  /** Columns of the terminal. */
  readonly width: number;
}

export const NARROWEST = 48; // columns below which two halves no longer stand side by side
const MOST_FINDINGS = 6;

/** The verdict for a terminal: both halves, what decided, what else, what to measure next, and what no bench can tell. */
export function summaryText(assessment: Assessment, { colour, width }: SummaryOptions): string {
  const columns = Math.max(NARROWEST, Math.floor(width));
  const blocks = [
    renderTitle(assessment, columns, colour),
    renderHalves(assessment, columns, colour),
    renderDecided(assessment, columns, colour),
    renderTally(assessment, columns, colour),
    renderLastChance(assessment, columns, colour),
    renderNext(assessment, columns, colour),
    wrapText(`${LABORATORY_TITLE}: ${laboratoryText(assessment.laboratory)}.`, columns).join('\n'),
    wrapText(ONE_SAMPLE, columns).join('\n'),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

function renderTitle({ case: about }: Assessment, width: number, colour: boolean): string {
  const lines = wrapText(`${about.name}, sample ${about.sample}`, width);
  const loud = about.invented ? [paint('INVENTED unit, invented data', 'bold', colour)] : [];
  return [...lines.map((line) => paint(line, 'bold', colour)), ...loud].join('\n');
}

function renderDecided(assessment: Assessment, width: number, colour: boolean): string {
  const { decidedBy, also, doubtful, doubtfulBy } = assessment.verdict;
  const blocks = [renderList('Decided by', find(assessment, decidedBy), width, colour)];
  for (const { failure, by } of also) blocks.push(renderList(`Also ${failure}`, find(assessment, by), width, colour));
  if (doubtful !== null) {
    const findings = find(assessment, doubtfulBy);
    const grade = findings[0]?.limit?.grade;
    blocks.push(
      renderList(
        `In doubt: would be ${doubtful}${grade === undefined ? '' : `, on a limit ${GRADE_PHRASES[grade]}`}`,
        findings,
        width,
        colour,
      ),
    );
  }
  return blocks.filter((block) => block !== '').join('\n');
}

function renderList(title: string, findings: readonly Finding[], width: number, colour: boolean): string {
  if (findings.length === 0) return '';
  const lines = findings.slice(0, MOST_FINDINGS).flatMap((finding) => {
    const rung = rungText(finding);
    const mark = paint(TEXT_MARKS[finding.outcome], OUTCOME_PAINTS[finding.outcome], colour);
    const name = hang(`${findingName(finding)}${rung === null ? '' : `: ${rung}`}`, width, '    ');
    return [`  ${mark} ${name.trimStart()}`, hang(decidedText(finding), width, '    ')];
  });
  const rest = findings.length - MOST_FINDINGS;
  return [paint(title, 'bold', colour), ...lines, ...(rest > 0 ? [`    and ${rest} more`] : [])].join('\n');
}

function renderTally(assessment: Assessment, width: number, colour: boolean): string {
  const counts = [...countOutcomes(assessment)].filter(([, count]) => count > 0);
  const words = counts.map(([outcome, count]) => ({ plain: `${TEXT_MARKS[outcome]} ${count} ${OUTCOME_WORDS[outcome]}`, outcome }));
  const lines: { plain: string; set: string }[] = [{ plain: 'Checks:', set: 'Checks:' }];
  for (const { plain, outcome } of words) {
    const last = lines.at(-1)!;
    const set = paint(plain, OUTCOME_PAINTS[outcome], colour);
    if (columnsOf(last.plain) + 2 + columnsOf(plain) <= width)
      lines[lines.length - 1] = { plain: `${last.plain}  ${plain}`, set: `${last.set}  ${set}` };
    else lines.push({ plain: `  ${plain}`, set: `  ${set}` });
  }
  return lines.map(({ set }) => set).join('\n');
}

function find(assessment: Assessment, ids: readonly string[]): Finding[] {
  return ids.flatMap((id) => getFinding(assessment, id) ?? []);
}
