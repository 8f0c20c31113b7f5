import { toCellKind } from './cell-kind.ts';
import type { RowReader } from './row-reader.ts';

export const COMMENT = /^\s*"?(?:#+|\/\/+|%+|!+|\*{1,2}(?=\s)|;+(?=\s*[A-Za-z\u0370-\uffff]))\s*/;
const SECTION = /^\[([^\]]{1,80})\]$|^\*{3,}\s*(.{1,80}?)\s*\**$/;
const KEY_AND_VALUE = /^([\p{L}][^=:]{0,79}?)\s*[=:]\s*(.*)$/u;

const LONGEST_KEY = 160; // characters; a longer line is a remark

/** What the lines above the table say, in the order of the file. */
export class Preamble {
  private readonly entries = new Map<string, string>();
  private section = '';

  /** A line of its own: a section, `key=value`, `key: value`, `key<separator>value`, or a title. */
  addLine(raw: string, cells: readonly string[], lineNumber: number): void {
    const line = raw
      .replace(COMMENT, '')
      .replace(/^"(.*)"$/, '$1')
      .trim();
    const filled = cells.filter((cell) => cell !== '');
    if (line === '' || filled.length === 0) return;
    const section = filled.length === 1 && line.length <= LONGEST_KEY ? SECTION.exec(line) : null;
    if (section !== null) {
      this.section = (section[1] ?? section[2])!.trim();
      return;
    }
    const first = (cells[0] ?? '').replace(COMMENT, '');
    if (filled.length >= 2 && first !== '' && first.length <= LONGEST_KEY && toCellKind(first) === 'text' && !/[=:]\s*\S/.test(first)) {
      this.add(first, filled.slice(1).join(', '));
      return;
    }
    const pair = KEY_AND_VALUE.exec(line);
    if (pair !== null) this.add(pair[1]!, pair[2]!.replace(/[,;\t]+$/, ''));
    else this.add(`line ${lineNumber}`, filled.join(', '));
  }

  add(rawKey: string, value: string): void {
    const key = rawKey.replace(/\s*[:=]\s*$/, '').trim();
    let unused = key;
    if (this.entries.has(unused) && this.section !== '') unused = `${this.section}.${key}`;
    for (let n = 2; this.entries.has(unused); n++) unused = `${key} (${n})`;
    this.entries.set(unused, value.trim());
  }

  /** The first entry whose key, without a unit in brackets, matches. Said for each channel alike, it is said once. */
  find(pattern: RegExp): { readonly key: string; readonly value: string; readonly bracket: string | null } | null {
    for (const [key, value] of this.entries) {
      const bracket = /\s*[([]([^()[\]]*)[)\]]\s*$/.exec(key);
      const bare = (bracket === null ? key : key.slice(0, bracket.index)).replace(/ \(\d+\)$/, '');
      if (pattern.test(bare)) return { key, value: toSingle(value), bracket: bracket === null ? null : bracket[1]! };
    }
    return null;
  }

  toRecord(): Record<string, string> {
    return Object.fromEntries(this.entries);
  }
}

function toSingle(value: string): string {
  const each = value.split(', ');
  return each.every((part) => part === each[0]) ? each[0]! : value;
}

/**
 * How many leading columns hold a preamble beside the samples: words (and what they say) in the first rows, blank below, while the
 * columns to the right hold values; a blank column may stand between. 0 when the file has no such columns.
 */
export function findPreambleBeside(rows: RowReader, sample: readonly number[]): number {
  const read = sample.map((line) => {
    const cells: string[] = [];
    return cells.slice(0, rows.read(line, cells));
  });
  let keys = 0;
  while (keys < read.length && (read[keys]![0] ?? '') !== '') {
    if (toCellKind(read[keys]![0]!) !== 'text') return 0;
    keys++;
  }
  const below = read.slice(keys).filter((cells) => cells.some((cell) => cell !== ''));
  const isGap =
    read.every((cells) => (cells[2] ?? '') === '' && cells.length > LEAST_CELLS) && read.some((cells) => (cells[LEAST_CELLS] ?? '') !== '');
  if (keys === 0) return findKeysFurtherDown(read);
  if (isGap) return read.slice(keys).every((cells) => cells[0] === '' || toCellKind(cells[0]!) === 'text') ? LEAST_CELLS : 0;
  return below.length >= FEWEST_ROWS && read.slice(0, keys).every((cells) => cells.length > 2) ? toFirstFilled(below) : 0;
}

const LEAST_CELLS = 3; // a key, what it says, and a blank cell
const FEWEST_ROWS = 2; // with fewer rows below the preamble no pattern can show

function toFirstFilled(rows: readonly (readonly string[])[]): number {
  let first = -1;
  for (const cells of rows) {
    const here = cells[0] === '' ? cells.findIndex((cell) => cell !== '') : 0;
    // A key may stand further down, behind a gap in the preamble.
    if (here === 0 && toCellKind(cells[0]!) === 'text') continue;
    if (here < 2 || (first >= 0 && here !== first)) return 0;
    first = here;
  }
  return Math.max(first, 0);
}

function findKeysFurtherDown(read: readonly (readonly string[])[]): number {
  const keyed = read.filter((cells) => (cells[0] ?? '') !== '');
  return keyed.length > 0 && keyed.length < read.length && keyed.every((cells) => toCellKind(cells[0]!) === 'text')
    ? toFirstFilled(read)
    : 0;
}
