import type { Assessment, Cell, Coverage, Finding, Outcome } from '../../core/result/assessment.ts';
import { html, type Markup, NOTHING } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { coverageHeadline, FAILURE_WEIGHTS, type FailureWeight } from '../words/failure-words.ts';
import { findingLimit, findingValue, getFinding } from '../words/finding-text.ts';
import { GRADE_PHRASES } from '../words/grade-words.ts';
import { rungText } from '../words/outcome-words.ts';
import { countCells, drawCoverageCells, drawCoverageSquare } from './coverage-cells.ts';
import { drawOutcomeMark } from './outcome-mark.ts';

/** The left half in words: what failed worst, and the rung or the number that decided. */
export interface FailureHalf {
  readonly word: string;
  readonly second: string;
  readonly weight: FailureWeight;
  readonly mark: Outcome;
}

const MARKS: Readonly<Record<FailureWeight, Outcome>> = { grave: 'fail', mild: 'fail', clear: 'pass', void: 'notAssessed' };

export function getFailureHalf(assessment: Assessment): FailureHalf {
  const { failure, doubtful, decidedBy, doubtfulBy } = assessment.verdict;
  if (doubtful !== null && (failure === 'Nothing found wrong' || failure === 'No verdict yet')) {
    // the clear word is never shown while a worse one may hold
    const grade = getFinding(assessment, doubtfulBy[0] ?? '')?.limit?.grade;
    return {
      word: `${doubtful}, in doubt`,
      second: grade === undefined ? 'not settled' : `on a limit ${GRADE_PHRASES[grade]}`,
      weight: 'mild',
      mark: 'inconclusive',
    };
  }
  const weight = FAILURE_WEIGHTS[failure];
  return { word: failure, second: getSecondLine(weight, getFinding(assessment, decidedBy[0] ?? '')), weight, mark: MARKS[weight] };
}

function getSecondLine(weight: FailureWeight, deciding: Finding | undefined): string {
  if (weight === 'void') return 'nothing was assessed';
  if (weight === 'clear') return 'in what was examined';
  if (deciding === undefined) return '';
  const rung = rungText(deciding);
  const title = getCheckWords(deciding.check).title;
  if (rung !== null)
    return `${rung}: ${title.charAt(0).toLowerCase()}${title.slice(1)}${deciding.about === null ? '' : `, ${deciding.about}`}`;
  const value = findingValue(deciding);
  const limit = findingLimit(deciding);
  return `${title}${value === '' ? '' : `: ${value}`}${limit === '' || value === '' ? '' : `, ${limit}`}`;
}

export const COVERAGE_CLASSES: Readonly<Record<Coverage, string>> = {
  examined: 'cv-full',
  'partly examined': 'cv-part',
  'not examined': 'cv-none',
};
const WORD_MARK = 24;
const WORD_SQUARE = 22;

/** Both halves of the verdict, always side by side and of one size. */
export function drawVerdictHalves(assessment: Assessment): Markup {
  return drawHalves(getFailureHalf(assessment), assessment.verdict);
}

interface Looked {
  readonly coverage: Readonly<Record<'shock' | 'fire', Coverage>>;
  readonly cells: Readonly<Record<'shock' | 'fire', readonly Pick<Cell, 'state'>[]>>;
}

/** The same halves, of what a list keeps of a case. */
export function drawHalves(left: FailureHalf, { coverage, cells }: Looked): Markup {
  const { worse, words } = coverageHeadline(coverage);
  const spoken = `Verdict in two parts. Worst failure: ${left.word}${left.second === '' ? '' : `, ${left.second}`}. Coverage: shock ${coverage.shock}, fire ${coverage.fire}.`;
  const strip = (name: 'shock' | 'fire'): Markup => {
    const { settled, of } = countCells(cells[name]);
    return html`<p class="cvs"><span class="cn">${name}</span><span class="cc">${drawCoverageCells(cells[name])}</span><span class="ct">${settled} of ${of}</span></p>`;
  };
  return html`<div class="halves" role="group" aria-label="${spoken}">
<div class="half ${left.weight}"><p class="over">worst failure</p><p class="word">${drawOutcomeMark(left.mark, WORD_MARK)}<span>${left.word}</span></p>${left.second === '' ? NOTHING : html`<p class="second">${left.second}</p>`}</div>
<div class="half ${COVERAGE_CLASSES[worse]}"><p class="over">shock and fire</p><p class="word">${drawCoverageSquare(worse, WORD_SQUARE)}<span>${words}</span></p>${strip('shock')}${strip('fire')}</div>
</div>`;
}
