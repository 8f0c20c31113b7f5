import { toCellKind } from './cell-kind.ts';
import type { RowReader } from './row-reader.ts';

export const COMMENT = /^\s*"?(?:#+|\/\/+|%+|!+|\*{1,2}(?=\s)|;+(?=\s*[A-Za-z\u0370-\uffff]))\s*/;
const SECTION = /^\[([^\]]{1,80})\]$|^\*{3,}\s*(.{1,80}?)\s*\**$/;
const KEY_AND_VALUE = /^([\p{L}][^=:]{0,79}?)\s*[=:]\s*(.*)$/u;

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
    const section = filled.length === 1 ? SECTION.exec(line) : null;
    if (section !== null) {
      this.section = (section[1] ?? section[2])!.trim();
      return;
    }
    const first = (cells[0] ?? '').replace(COMMENT, '');
    if (filled.length >= 2 && first !== '' && toCellKind(first) === 'text' && !/[=:]\s*\S/.test(first)) {
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

  /** The first entry whose key, without a unit in brackets, matches. */
  find(pattern: RegExp): { readonly key: string; readonly value: string; readonly bracket: string | null } | null {
    for (const [key, value] of this.entries) {
      const bracket = /\s*[([]([^()[\]]*)[)\]]\s*$/.exec(key);
      const bare = (bracket === null ? key : key.slice(0, bracket.index)).replace(/ \(\d+\)$/, '');
      if (pattern.test(bare)) return { key, value, bracket: bracket === null ? null : bracket[1]! };
    }
    return null;
  }

  toRecord(): Record<string, string> {
    return Object.fromEntries(this.entries);
  }
}

const FEWEST_ROWS = 4; // with fewer rows no pattern of "words first, then blanks" can show

/**
 * How many leading columns hold a preamble beside the samples: words in the first rows, blank for the rest of the file, while the
 * columns to the right hold values in every row. 0 when the file has no such columns.
 */
export function findPreambleBeside(rows: RowReader, sample: readonly number[]): number {
  if (sample.length < FEWEST_ROWS) return 0;
  const cells: string[] = [];
  let beside = -1;
  const tail = sample.slice(Math.floor(sample.length / 2));
  for (const line of tail) {
    const count = rows.read(line, cells);
    const first = cells.slice(0, count).findIndex((cell) => cell !== '');
    if (first < 2 || (beside >= 0 && first !== beside)) return 0;
    beside = first;
  }
  if (beside < 2) return 0;
  let keys = 0;
  for (const line of sample.slice(0, Math.ceil(sample.length / 2))) {
    const count = rows.read(line, cells);
    if (count > 0 && cells[0] !== '') {
      if (toCellKind(cells[0]!) !== 'text') return 0;
      keys++;
    }
    for (let i = 2; i < Math.min(beside, count); i++) if (cells[i] !== '') return 0;
  }
  return keys > 0 ? beside : 0;
}
