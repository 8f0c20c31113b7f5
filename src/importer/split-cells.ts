export type SeparatorName = 'comma' | 'semicolon' | 'tab' | 'bar' | 'space' | 'none';

const CODES: Readonly<Record<SeparatorName, number>> = { comma: 44, semicolon: 59, tab: 9, bar: 124, space: 32, none: -1 };
const QUOTE = 34;
const SPACE = 32;
const NO_BREAK_SPACE = 0xa0;
const DELETE = 0x7f;

/**
 * The cells of a line, without quotes, blanks around them and control characters in them. A quote opens only at the start of a cell;
 * one that never closes is an ordinary character. Writes into `out` and returns the number of cells.
 */
export function splitCells(line: string, separator: SeparatorName, out: string[]): number {
  const code = CODES[separator];
  const end = line.length;
  let count = 0;
  let at = 0;
  if (separator === 'space') return splitAtBlanks(line, out);
  for (;;) {
    let start = at;
    while (start < end && isBlank(line.charCodeAt(start)) && line.charCodeAt(start) !== code) start++;
    if (start < end && line.charCodeAt(start) === QUOTE) {
      const close = findClose(line, start + 1, code);
      if (close >= 0) {
        out[count++] = clean(line.slice(start + 1, close).replaceAll('""', '"'));
        at = close + 1;
        while (at < end && line.charCodeAt(at) !== code) at++;
        if (at >= end) return count;
        at++;
        continue;
      }
    }
    let stop = start;
    let odd = false;
    while (stop < end) {
      const c = line.charCodeAt(stop);
      if (c === code) break;
      if (c < SPACE || c === DELETE) odd = true;
      stop++;
    }
    let last = stop;
    while (last > start && isBlank(line.charCodeAt(last - 1))) last--;
    const cell = line.slice(start, last);
    out[count++] = odd ? clean(cell) : cell;
    if (stop >= end) return count;
    at = stop + 1;
  }
}

/** The quote that closes a cell: followed by blanks and the separator or the end. */
function findClose(line: string, from: number, code: number): number {
  for (let i = line.indexOf('"', from); i >= 0; i = line.indexOf('"', i + 1)) {
    if (line.charCodeAt(i + 1) === QUOTE) {
      i++;
      continue;
    }
    let next = i + 1;
    while (next < line.length && line.charCodeAt(next) !== code && isBlank(line.charCodeAt(next))) next++;
    return next >= line.length || line.charCodeAt(next) === code ? i : -1;
  }
  return -1;
}

function splitAtBlanks(line: string, out: string[]): number {
  let count = 0;
  for (const piece of line.split(/[ \t\u00a0]+/)) if (piece !== '') out[count++] = clean(piece);
  return count;
}

function isBlank(code: number): boolean {
  return code <= SPACE || code === NO_BREAK_SPACE || code === BYTE_ORDER_MARK || code === NARROW_SPACE;
}

const BYTE_ORDER_MARK = 0xfeff;
const NARROW_SPACE = 0x202f;

/** Control characters are no part of a word or number; a line end inside a quoted cell is a blank. */
function clean(cell: string): string {
  return cell
    .replace(/[\r\n\t]+/g, ' ')
    .replace(/[\u0000-\u001f\u007f\u0080-\u009f\ufeff\u200b]/g, '')
    .trim();
}
