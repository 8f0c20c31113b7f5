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
