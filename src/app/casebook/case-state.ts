import type { Json } from './change.ts';

/**
 * What a person entered and that cannot count yet: a text that is not understood, or an item (`item`) that still lacks something. Kept at
 * its place, left out of the case.
 */
export interface Draft {
  readonly text: string;
  readonly item?: { readonly [key: string]: Json };
  /** Why it was not understood: the parts of a refusal, for the words. */
  readonly refusal: { readonly code: string; readonly got: string; readonly expected: string; readonly suggestion?: string };
}

/** What is kept of one case: the document as typed, and by its place every text that could not be read. Changes name places in this. */
export interface CaseState {
  readonly case: { readonly [key: string]: Json };
  readonly drafts: { readonly [place: string]: Json };
}
