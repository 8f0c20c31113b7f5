import type { Assessment, Cell } from '../../core/result/assessment.ts';
import { countCells } from '../figure/coverage-cells.ts';
import { getFailureHalf } from '../figure/verdict-halves.ts';
import { coverageHeadline, type FailureWeight } from '../words/failure-words.ts';
import { type Paint, paint } from './ansi.ts';
import { padTo, wrapText } from './terminal-text.ts';
import { TEXT_CELLS, TEXT_MARKS, TEXT_SQUARES } from './text-marks.ts';

/** Corners and edges by weight: what is grave and what nobody looked at have the same heavy frame. */
const FRAMES = {
  heavy: ['┏', '━', '┓', '┃', '┗', '┛'],
  plain: ['┌', '─', '┐', '│', '└', '┘'],
  dashed: ['┌', '╌', '┐', '╎', '└', '┘'],
} as const;
type Frame = keyof typeof FRAMES;

const FAILURE_FRAMES: Readonly<Record<FailureWeight, { frame: Frame; paint: Paint }>> = {
  grave: { frame: 'heavy', paint: 'grave' },
  mild: { frame: 'plain', paint: 'fail' },
  clear: { frame: 'plain', paint: 'pass' },
  void: { frame: 'dashed', paint: 'quiet' },
};

/** Both halves side by side, of one width and one height. */
export function renderHalves(assessment: Assessment, width: number, colour: boolean): string {
  const EDGES = 4; // a frame and a space on either side
  const outer = Math.floor((width - 1) / 2);
  const inner = outer - EDGES;
  const left = getFailureHalf(assessment);
  const { coverage, cells } = assessment.verdict;
  const { worse, words } = coverageHeadline(coverage);
  const leftLines = [
    'worst failure',
    ...wrapText(`${TEXT_MARKS[left.mark]} ${left.word}`, inner),
    ...(left.second === '' ? [] : wrapText(left.second, inner)),
  ];
  const rightLines = [
    'shock and fire',
    ...wrapText(`${TEXT_SQUARES[worse]} ${words}`, inner),
    ...cellLines('shock', cells.shock, inner),
    ...cellLines('fire', cells.fire, inner),
  ];
  const height = Math.max(leftLines.length, rightLines.length);
  const leftStyle = FAILURE_FRAMES[left.weight];
  const rightFrame: Frame = worse === 'not examined' ? 'heavy' : 'plain';
  const drawnLeft = drawFrame(leftLines, inner, height, leftStyle.frame).map((line) => paint(line, leftStyle.paint, colour));
  const drawnRight = drawFrame(rightLines, inner, height, rightFrame).map((line) =>
    worse === 'not examined' ? paint(line, 'unexamined', colour) : line,
  );
  return drawnLeft.map((line, index) => `${line} ${drawnRight[index] ?? ''}`).join('\n');
}

function cellLines(name: string, cells: readonly Cell[], inner: number): string[] {
  const { settled, of } = countCells(cells);
  const signs = cells.map(({ state }) => TEXT_CELLS[state]).join('');
  const one = `${padTo(name, 'shock'.length)} ${signs} ${settled} of ${of}`;
  if (Array.from(one).length <= inner) return [one];
  return [`${name} ${settled} of ${of}`, ...wrapText(signs, inner)];
}

function drawFrame(lines: readonly string[], inner: number, height: number, frame: Frame): string[] {
  const [topLeft, level, topRight, upright, bottomLeft, bottomRight] = FRAMES[frame];
  const rule = level.repeat(inner + 2);
  const filled = Array.from({ length: height }, (_, index) => `${upright} ${padTo(lines[index] ?? '', inner)} ${upright}`);
  return [`${topLeft}${rule}${topRight}`, ...filled, `${bottomLeft}${rule}${bottomRight}`];
}
