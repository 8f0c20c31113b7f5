const CHAR = 6.1; // width of a letter at 12 px, generous

/** Text that would run into its neighbour ends in an ellipsis; the whole of it stands in the finding below. */
export function cutText(text: string, room: number): string {
  const most = Math.max(1, Math.floor(room / CHAR));
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}

/** Lines that fit the room, broken between words; a word longer than the room is cut. */
export function wrapLines(text: string, room: number): readonly string[] {
  const most = Math.max(1, Math.floor(room / CHAR));
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(cutText(word, room));
  }
  return lines;
}
