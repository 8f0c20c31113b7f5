import type { Json } from './change.ts';

/** A text that a person typed and that cannot be read yet: kept at its place, left out of the case. */
export interface Draft {
  readonly text: string;
  /** Why it was not understood: the parts of a refusal, for the words. */
  readonly refusal: { readonly code: string; readonly got: string; readonly expected: string; readonly suggestion?: string };
}

/** What is kept of one case: the document as typed, and by its place every text that could not be read. Changes name places in this. */
export interface CaseState {
  readonly case: { readonly [key: string]: Json };
  readonly drafts: { readonly [place: string]: Json };
}
