import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { drawVerdictHalves } from '../figure/verdict-halves.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { FAILURE_MEANINGS } from '../words/failure-words.ts';
import { decidedText, findingName, getFinding } from '../words/finding-text.ts';
import { GRADE_PHRASES } from '../words/grade-words.ts';
import { LABORATORY_TITLE, laboratoryText } from '../words/laboratory-words.ts';
import { rungText } from '../words/outcome-words.ts';
import { linkToFinding } from './report-parts.ts';

const MOST_NAMED = 4; // findings named in the verdict; all are below
const MOST_CHECKS = 8;

/** Both halves, what decided, what else would apply, what is in doubt, and what no bench can tell. */
export function setVerdict(assessment: Assessment): Markup {
  const { verdict, laboratory } = assessment;
  const lines = listVerdictLines(assessment);
  return html`<section class="verdict" id="verdict" tabindex="-1" aria-label="Verdict">${drawVerdictHalves(assessment)}
${joined(lines.map((line) => html`<p class="txt">${line}</p>`))}
${verdict.failure === 'No verdict yet' && verdict.doubtful === null ? html`<p class="txt">Nothing was assessed, so nothing is said about this unit. What has to be looked at is listed under “What was not examined”.</p>` : NOTHING}
<p class="lablist"><b>${LABORATORY_TITLE}:</b> ${laboratoryText(laboratory)}.</p></section>`;
}

/** What decided, what else would apply, what is in doubt, what is not settled: a sentence or two each. */
export function listVerdictLines(assessment: Assessment): readonly Markup[] {
  return [...decided(assessment), ...also(assessment), ...doubtful(assessment), ...missing(assessment)];
}

function decided(assessment: Assessment): Markup[] {
  const { failure, decidedBy, grade } = assessment.verdict;
  if (failure === 'Nothing found wrong' && assessment.verdict.doubtful === null)
    return [html`In what was examined, no check that was assessed found anything wrong. That says nothing about what was not examined.`];
  const findings = present(assessment, decidedBy);
  if (findings.length === 0) return [];
  const weakest = grade === null ? '' : ` The weakest limit that decides is ${GRADE_PHRASES[grade]}.`;
  return [html`<b>${failure}</b>: ${FAILURE_MEANINGS[failure]}. ${named(findings)}${weakest}`];
}

function also(assessment: Assessment): Markup[] {
  return assessment.verdict.also.map(({ failure, by }) => html`Also <b>${failure}</b>. ${named(present(assessment, by))}`);
}

function doubtful(assessment: Assessment): Markup[] {
  const { doubtful: word, doubtfulBy } = assessment.verdict;
  if (word === null) return [];
  const findings = present(assessment, doubtfulBy);
  const grade = findings[0]?.limit?.grade;
  return [html`In doubt: would be <b>${word}</b>${grade === undefined ? '' : `, on a limit ${GRADE_PHRASES[grade]}`}. ${named(findings)}`];
}

function missing(assessment: Assessment): Markup[] {
  const checks = [...new Set(assessment.verdict.missing.map(({ check }) => check))];
  if (checks.length === 0 || (assessment.verdict.failure === 'No verdict yet' && assessment.verdict.doubtful === null)) return [];
  const titles = checks.slice(0, MOST_CHECKS).map((check) => getCheckWords(check).title);
  const rest = checks.length - titles.length;
  return [
    html`Not settled for shock and fire, ${checks.length} ${checks.length === 1 ? 'check' : 'checks'}: ${titles.join('; ')}${rest > 0 ? `; and ${rest} more, named under “What was not examined”` : ''}.`,
  ];
}

function present(assessment: Assessment, ids: readonly string[]): Finding[] {
  return ids.flatMap((id) => getFinding(assessment, id) ?? []);
}

function named(findings: readonly Finding[]): Markup {
  const shown = findings.slice(0, MOST_NAMED).map((finding) => {
    const rung = rungText(finding);
    return html`${linkToFinding(finding, findingName(finding))}: ${rung === null ? '' : `${rung}, `}${decidedText(finding)}. `;
  });
  const rest = findings.length - shown.length;
  return html`${joined(shown)}${rest > 0 ? `And ${rest} more, below.` : ''}`;
}
