/** A text that was kept as typed and not understood. */
export interface UnreadText {
  readonly text: string;
  readonly refusal: { readonly expected: string; readonly suggestion?: string };
}

/** One sentence about it: what was typed, what would have been understood, and what became of it. */
export function draftWords({ text, refusal }: UnreadText): string {
  const hint = refusal.suggestion === undefined ? '' : ` Did you mean “${refusal.suggestion}”?`;
  return `“${text}” is not ${refusal.expected}. Kept as typed, left out of the judgement.${hint}`;
}

/** One sentence about an item that is kept but lacks something it must have. */
export function lackingWords({ refusal }: UnreadText): string {
  return `Not counted yet: it still needs ${refusal.expected}.`;
}
