import { findQuantity } from './cell-kind.ts';
import type { DecimalMark } from './instrument-file.ts';
import type { RowReader } from './row-reader.ts';
import { findScaled } from './scale-letter.ts';
import { findGroupedByApostrophe } from './thousands-mark.ts';

/** What the numbers of the table show about their decimal mark. */
export interface DecimalEvidence {
  readonly mark: DecimalMark;
  /** Whether the other mark groups thousands, as numbers with both marks have shown. */
  readonly grouping: boolean;
  /** Why it cannot be told, with a cell that shows it; null when it can. */
  readonly doubt: { readonly example: string; readonly mixed: boolean } | null;
  /** Columns with a mark in any number. */
  readonly columns: number[];
}

const GROUPS_OF_THREE = /^[+\-−]?[1-9]\d{0,2}(?:[.,]\d{3})+$/;
const MARKED = /^[+\-−]?(?:\d[\d.,]*|[.,]\d+)(?:[eE][+-]?\d+)?$/;
/** The open standard's numbers for infinity and for no number: instruments write them with a point in any language. */
export const STANDARD_MARK = /^[+-]?9[.,]91?0*e\+?37$/i;
const ONE_MARK = /^[^.,]*[.,][^.,]*$/;

export function weighDecimalMark(rows: RowReader, firstData: number, positions: readonly number[]): DecimalEvidence {
  const proof = { point: 0, comma: 0 };
  const maybeGroups = { point: '', comma: '' };
  const surelyGroups = { point: 0, comma: 0 };
  const example = { point: '', comma: '' };
  const columns = new Set<number>();
  const cells: string[] = [];
  for (let line = firstData; line < rows.count; line++) {
    const count = rows.read(line, cells);
    for (const p of positions) {
      if (p >= count) break;
      const cell = toNumberPart(cells[p]!);
      const hasComma = cell.includes(',');
      const hasPoint = cell.includes('.');
      if ((!hasComma && !hasPoint) || !MARKED.test(cell) || STANDARD_MARK.test(cell)) continue;
      columns.add(p);
      if (hasComma && hasPoint) {
        const decimal = cell.lastIndexOf(',') > cell.lastIndexOf('.') ? 'comma' : 'point';
        const other = decimal === 'comma' ? 'point' : 'comma';
        // "1.234,5": the last mark is the decimal one, and the other stands before groups of three.
        if (!/^[+\-−]?\d{1,3}([.,])\d{3}(\1\d{3})*[.,]\d+([eE][+-]?\d+)?$/.test(cell)) continue;
        proof[decimal]++;
        surelyGroups[other]++;
        example[decimal] ||= cell;
        continue;
      }
      const own = hasComma ? 'comma' : 'point';
      if (!GROUPS_OF_THREE.test(cell)) {
        if (!ONE_MARK.test(cell)) continue;
        proof[own]++;
        example[own] ||= cell;
      } else if (ONE_MARK.test(cell)) maybeGroups[own] ||= cell;
      else surelyGroups[own]++;
    }
  }
  return decide(
    proof,
    maybeGroups,
    surelyGroups,
    example,
    [...columns].sort((a, b) => a - b),
  );
}

/** The number of "5,02 V". */
function toNumberPart(cell: string): string {
  const last = cell.charCodeAt(cell.length - 1);
  if (last >= DIGIT_0 && last <= DIGIT_9) return findGroupedByApostrophe(cell) ?? cell;
  return findQuantity(cell)?.number ?? findScaled(cell)?.number ?? cell;
}

const DIGIT_0 = 0x30;
const DIGIT_9 = 0x39;

type PerMark<T> = Record<DecimalMark, T>;

function decide(
  proof: PerMark<number>,
  maybe: PerMark<string>,
  sure: PerMark<number>,
  example: PerMark<string>,
  columns: number[],
): DecimalEvidence {
  const plain = { columns, grouping: false, doubt: null };
  if (proof.comma > 0 && proof.point > 0) {
    return { ...plain, mark: 'point', doubt: { example: `${example.point} and ${example.comma}`, mixed: true } };
  }
  for (const mark of ['comma', 'point'] as const) {
    if (proof[mark] === 0) continue;
    const other = mark === 'comma' ? 'point' : 'comma';
    if (sure[mark] > 0) return { ...plain, mark, doubt: { example: example[mark], mixed: true } };
    if (maybe[other] !== '' && sure[other] === 0)
      return { ...plain, mark, doubt: { example: `${maybe[other]} beside ${example[mark]}`, mixed: true } };
    return { ...plain, mark, grouping: sure[other] > 0 };
  }
  if (sure.comma > 0 && sure.point > 0) return { ...plain, mark: 'point', doubt: { example: maybe.comma || maybe.point, mixed: true } };
  for (const grouped of ['comma', 'point'] as const) {
    const mark = grouped === 'comma' ? 'point' : 'comma';
    if (sure[grouped] === 0) continue;
    if (maybe[mark] !== '') return { ...plain, mark, grouping: true, doubt: { example: maybe[mark], mixed: true } };
    return { ...plain, mark, grouping: true };
  }
  // Only numbers such as "1,234" are left: with a comma they may be thousands. A point is then the decimal mark of the open standards.
  if (maybe.comma !== '') {
    const both = maybe.point !== '';
    return {
      ...plain,
      mark: both ? 'point' : 'comma',
      doubt: { example: both ? `${maybe.comma} and ${maybe.point}` : maybe.comma, mixed: both },
    };
  }
  return { ...plain, mark: 'point' };
}
