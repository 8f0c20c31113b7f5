import { toInertText } from '../markup/markup.ts';

/** Text of a case on one line of a terminal: no control signs, no line ends, plain spaces. */
export function toTerminal(text: string): string {
  return toInertText(text)
    .replace(/[\r\n\t]+/g, ' ')
    .replace(/\u00a0/g, ' ');
}

/** Number of columns, counting letters as one and marks that stand on them as none. */
export function columnsOf(text: string): number {
  return Array.from(text.replace(/\p{M}/gu, '')).length;
}

export function padTo(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - columnsOf(text)));
}

/** Breaks at spaces; a word longer than the line is cut, so that nothing is lost and nothing runs over. */
export function wrapText(text: string, width: number): readonly string[] {
  const room = Math.max(1, width);
  const lines: string[] = [];
  let line = '';
  for (const word of toTerminal(text).split(' ')) {
    let rest = word;
    if (line !== '' && columnsOf(line) + 1 + columnsOf(rest) > room) {
      lines.push(line);
      line = '';
    }
    while (columnsOf(rest) > room) {
      const signs = Array.from(rest);
      lines.push(signs.slice(0, room).join(''));
      rest = signs.slice(room).join('');
    }
    line = line === '' ? rest : `${line} ${rest}`;
  }
  if (line !== '' || lines.length === 0) lines.push(line);
  return lines;
}

/** Wrapped behind a lead; the following lines stand below the first. */
export function hang(text: string, width: number, first: string): string {
  const rest = ' '.repeat(columnsOf(first));
  return wrapText(text, width - columnsOf(first))
    .map((line, index) => `${index === 0 ? first : rest}${line}`)
    .join('\n');
}
