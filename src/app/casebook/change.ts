/**
 * One place of a case that becomes something else. Places are written by id ("/case/exhibits/sweep-1/table/rows/r3/cells/v"), never by
 * index, so that the edits of two tabs merge. `was` is what the writer saw there; a missing `was` or `to` means that nothing stands there.
 */
export interface Change {
  readonly at: string;
  readonly was?: Json | undefined;
  readonly to?: Json | undefined;
  /** For an item that joins a list: the id of the item it follows, null for the first place; left out, it goes to the end. */
  readonly after?: string | null | undefined;
}

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
