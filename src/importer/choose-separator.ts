import { isValueKind, toCellKind } from './cell-kind.ts';
import { getLine, type Lines } from './index-lines.ts';
import { type SeparatorName, splitCells } from './split-cells.ts';

/**
 * The separator that cuts the rows into equally many cells that are values. Tab, semicolon and bar stand in no number, so they go first;
 * a comma may be a decimal mark, which is asked about later; blanks separate only where nothing else does.
 */
const CANDIDATES: readonly SeparatorName[] = ['tab', 'semicolon', 'bar', 'comma', 'none', 'space'];
const VALUE_SHARE = 0.2; // of the cells must be values, the others words; house choice
const EVEN_SHARE = 0.5; // of the rows with values must have the commonest number of cells; house choice
const TEXT_FIRST_WEIGHT = 0.2; // a row that begins with a word is rather a line of the preamble

export function chooseSeparator(lines: Lines, sample: readonly number[]): SeparatorName | null {
  let best: SeparatorName | null = null;
  let bestShare = 0;
  for (const separator of CANDIDATES) {
    if (separator === 'bar' && !lines.text.includes('|')) continue; // seldom there: a long file is not cut up once more for nothing
    const seen = weigh(lines, sample, separator);
    if (seen === null) continue;
    if (separator !== 'none' && seen.width < 2) continue;
    if (separator === 'space' && seen.hasSigns) continue;
    if (seen.valueShare >= VALUE_SHARE && seen.evenShare >= EVEN_SHARE) return separator;
    if (seen.valueShare * seen.evenShare > bestShare) {
      bestShare = seen.valueShare * seen.evenShare;
      best = separator;
    }
  }
  return best;
}

interface Weighed {
  readonly width: number;
  readonly valueShare: number;
  readonly evenShare: number;
  /** Whether a cell holds signs that separate elsewhere: more than one comma, or a semicolon. */
  readonly hasSigns: boolean;
}

function weigh(lines: Lines, sample: readonly number[], separator: SeparatorName): Weighed | null {
  const groups = new Map<number, { weight: number; rows: number; values: number; filled: number }>();
  const cells: string[] = [];
  let rowsWithValues = 0;
  let hasSigns = false;
  for (const line of sample) {
    const count = splitCells(getLine(lines, line), separator, cells);
    let values = 0;
    let filled = 0;
    let firstIsValue: boolean | null = null;
    for (let i = 0; i < count; i++) {
      const kind = toCellKind(cells[i]!);
      if (kind === 'blank') continue;
      if (/;|,[^,]*,/.test(cells[i]!)) hasSigns = true;
      filled++;
      const isValue = isValueKind(kind);
      if (isValue) values++;
      firstIsValue ??= isValue;
    }
    if (values === 0) continue;
    rowsWithValues++;
    const group = groups.get(count) ?? { weight: 0, rows: 0, values: 0, filled: 0 };
    group.weight += values * (firstIsValue === true ? 1 : TEXT_FIRST_WEIGHT);
    group.rows++;
    group.values += values;
    group.filled += filled;
    groups.set(count, group);
  }
  let best: [number, { weight: number; rows: number; values: number; filled: number }] | null = null;
  for (const entry of groups) if (best === null || entry[1].weight > best[1].weight) best = entry;
  if (best === null) return null;
  return { width: best[0], valueShare: best[1].values / best[1].filled, evenShare: best[1].rows / rowsWithValues, hasSigns };
}

const HEAD_LINES = 40; // of a long file, its first lines
const SPREAD_LINES = 260; // and lines evenly spread over the rest; house choice

/** Lines that stand for the file: all of a short one. Blank lines and comments are left out. */
export function sampleLines(lines: Lines): number[] {
  const picked: number[] = [];
  const pick = (line: number) => {
    const text = getLine(lines, line).trim();
    if (text !== '' && !/^(#|\/\/)/.test(text)) picked.push(line);
  };
  const stride = Math.max(1, (lines.count - HEAD_LINES) / SPREAD_LINES);
  for (let i = 0; i < Math.min(HEAD_LINES, lines.count); i++) pick(i);
  for (let at = HEAD_LINES; at < lines.count - 1; at += stride) pick(Math.floor(at));
  if (lines.count > HEAD_LINES) pick(lines.count - 1);
  return picked;
}
