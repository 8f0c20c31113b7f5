const CHAR = 6.1; // width of a letter at 12 px, generous

/** Text that would run into its neighbour ends in an ellipsis; the whole of it stands in the finding below. */
export function cutText(text: string, room: number): string {
  const most = Math.max(1, Math.floor(room / CHAR));
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}
