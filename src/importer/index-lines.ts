/** Where the lines of a text start and end. A quoted cell may hold a line end; that does not end the line. */
export interface Lines {
  readonly text: string;
  readonly count: number;
  /** `count + 1` offsets: a line runs from its start to the next start, less its line end. */
  readonly starts: Uint32Array;
  /** `lf`, `crlf`, `cr`, `mixed`, `none`. */
  readonly lineEnd: string;
  /** Whether the last line ends in a line end: if not, the file may have been cut off. */
  readonly closed: boolean;
}

const LF = 10;
const CR = 13;
const QUOTE = 34;
const FIRST_ROOM = 4096; // lines before the index grows
const LONGEST_BROKEN_CELL = 300; // characters a quoted cell with line ends may have; a longer one is a stray quote

export function indexLines(text: string): Lines {
  let starts = new Uint32Array(FIRST_ROOM);
  let count = 0;
  let lf = 0;
  let crlf = 0;
  const hasLf = text.includes('\n');
  let nextQuote = text.indexOf('"'); // remembered, so that a lone quote far down is not searched for from every line
  const end = text.length;
  const step = hasLf ? '\n' : '\r';
  let from = 0;
  let searched = 0;
  while (from < end) {
    if (count + 2 >= starts.length) {
      const larger = new Uint32Array(starts.length * 2);
      larger.set(starts);
      starts = larger;
    }
    starts[count++] = from;
    let at = text.indexOf(step, Math.max(from, searched));
    if (nextQuote >= 0 && nextQuote < from) nextQuote = text.indexOf('"', from);
    let scanned = from;
    while (nextQuote >= 0 && nextQuote < at) {
      const closing = findClosingQuoteAcross(text, scanned, at);
      if (closing < 0) break;
      scanned = closing + 1;
      at = text.indexOf(step, closing);
    }
    if (at < 0) {
      from = end;
      break;
    }
    if (hasLf) {
      if (at > 0 && text.charCodeAt(at - 1) === CR) crlf++;
      else lf++;
    }
    from = at + 1;
    searched = from;
  }
  starts[count] = end;
  const last = text.charCodeAt(end - 1);
  const closed = last === LF || last === CR;
  let lineEnd = 'none';
  if (hasLf) lineEnd = crlf === 0 ? 'lf' : lf === 0 ? 'crlf' : 'mixed';
  else if (text.includes('\r')) lineEnd = 'cr';
  return { text, count, starts: starts.slice(0, count + 1), lineEnd, closed };
}

/** Where the quote closes that is open at a line end, or -1 when none is open there or it never closes nearby. */
function findClosingQuoteAcross(text: string, from: number, lineEnd: number): number {
  let open = -1;
  for (let i = text.indexOf('"', from); i >= 0 && i < lineEnd; i = text.indexOf('"', i + 1)) {
    if (open < 0) {
      if (i === from || isSeparator(text.charCodeAt(i - 1))) open = i;
    } else if (text.charCodeAt(i + 1) === QUOTE) i++;
    else open = -1;
  }
  if (open < 0) return -1;
  const limit = Math.min(text.length, open + LONGEST_BROKEN_CELL);
  for (let i = lineEnd; i < limit; i++) {
    if (text.charCodeAt(i) !== QUOTE) continue;
    if (text.charCodeAt(i + 1) === QUOTE) i++;
    else {
      const next = text.charCodeAt(i + 1);
      return Number.isNaN(next) || next === LF || next === CR || isSeparator(next) ? i : -1;
    }
  }
  return -1;
}

function isSeparator(code: number): boolean {
  return code === COMMA || code === SEMICOLON || code === TAB;
}

const COMMA = 44;
const SEMICOLON = 59;
const TAB = 9;

export function getLine(lines: Lines, index: number): string {
  let end = lines.starts[index + 1]!;
  const start = lines.starts[index]!;
  while (end > start && (lines.text.charCodeAt(end - 1) === LF || lines.text.charCodeAt(end - 1) === CR)) end--;
  return lines.text.slice(start, end);
}
