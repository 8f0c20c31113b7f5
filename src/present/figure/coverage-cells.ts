import type { Cell, Coverage } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup } from '../markup/markup.ts';
import { COVERAGE_WORDS } from '../words/failure-words.ts';

export interface CoverageCount {
  readonly settled: number;
  readonly of: number;
}

/** How many of the checks that apply are settled, whichever way they went. */
export function countCells(cells: readonly Pick<Cell, 'state'>[]): CoverageCount {
  const applying = cells.filter(({ state }) => state !== 'notApplicable');
  return { settled: applying.filter(({ state }) => state === 'settled').length, of: applying.length };
}

const CELL_WIDTH = 8;
const CELL_HEIGHT = 11;
const PITCH_X = 10;
const PITCH_Y = 13;
const A_ROW = 10; // ten cells in a row can be counted at a glance

/** One square per check of the bench set that applies: full, half or hatched. Checks that do not apply are counted out. */
export function drawCoverageCells(cells: readonly Pick<Cell, 'state'>[]): Markup {
  const applying = cells.filter(({ state }) => state !== 'notApplicable');
  const columns = Math.min(A_ROW, Math.max(1, applying.length));
  const rows = Math.max(1, Math.ceil(applying.length / A_ROW));
  const width = columns * PITCH_X - 2;
  const height = rows * PITCH_Y - 2;
  const drawn = applying.map(({ state }, index) => drawCell(state, (index % A_ROW) * PITCH_X, Math.floor(index / A_ROW) * PITCH_Y));
  return html`<svg class="cov strip" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" aria-hidden="true">${joined(drawn)}</svg>`;
}

function drawCell(state: Cell['state'], x: number, y: number): Markup {
  const right = x + CELL_WIDTH;
  const bottom = y + CELL_HEIGHT;
  if (state === 'settled') return html`<rect class="f" x="${x}" y="${y}" width="${CELL_WIDTH}" height="${CELL_HEIGHT}"/>`;
  const EDGE = 0.5;
  const edge = html`<rect class="e" x="${x + EDGE}" y="${y + EDGE}" width="${CELL_WIDTH - 1}" height="${CELL_HEIGHT - 1}"/>`;
  if (state === 'inconclusive') return html`<path class="f" d="M${x} ${y}H${right}L${x} ${bottom}Z"/>${edge}`;
  return html`${edge}<path class="h" d="${hatch(x, y, CELL_WIDTH, CELL_HEIGHT)}"/>`;
}

/** Three strokes rising to the right, cut at the edges. */
function hatch(x: number, y: number, width: number, height: number): string {
  const slope = height / width;
  return [0.5, 1, 1.5]
    .map((share) => {
      const reach = share * width;
      const from = reach <= width ? [x, y + reach * slope] : [x + reach - width, y + height];
      const to = reach <= width ? [x + reach, y] : [x + width, y + (reach - width) * slope];
      return `M${c(from[0]!)} ${c(from[1]!)}L${c(to[0]!)} ${c(to[1]!)}`;
    })
    .join('');
}

/** The square that leads the coverage word; outcome marks are never squares. */
export function drawCoverageSquare(coverage: Coverage, size: number): Markup {
  const SIDE = 14;
  const INNER = 12;
  const edge = html`<rect class="e" x="1" y="1" width="${INNER}" height="${INNER}"/>`;
  const inside: Readonly<Record<Coverage, Markup>> = {
    examined: html`<rect class="f" x="1" y="1" width="${INNER}" height="${INNER}"/>`,
    'partly examined': html`<path class="f" d="M1 1H13L1 13Z"/>${edge}`,
    'not examined': html`<path class="h" d="M1 5L5 1M1 9.5L9.5 1M1.8 12.7L12.7 1.8M5 13L13 5M9.5 13L13 9.5"/>${edge}`,
  };
  return html`<svg class="cov" width="${size}" height="${size}" viewBox="0 0 ${SIDE} ${SIDE}" role="img" aria-label="${COVERAGE_WORDS[coverage].toLowerCase()}">${inside[coverage]}</svg>`;
}
