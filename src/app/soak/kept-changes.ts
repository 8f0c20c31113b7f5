import type { CaseState } from '../casebook/case-state.ts';
import type { Change, Json } from '../casebook/change.ts';
import type { KeptFit } from './fit-soak.ts';

/** What names a kept fit in a case of a casebook, in place of an older one of the same id. */
export function keptChanges(state: CaseState, { attachment, computed }: Pick<KeptFit, 'attachment' | 'computed'>): Change[] {
  return [put(state, 'files', attachment), put(state, 'computed', computed)];
}

function put(state: CaseState, list: 'files' | 'computed', entry: { readonly id: string }): Change {
  const items = state.case[list] as readonly { readonly id: string }[] | undefined;
  const to = entry as unknown as Json;
  if (items === undefined) return { at: `/case/${list}`, to: [to] }; // the list begins with it
  const known = items.find(({ id }) => id === entry.id);
  return { at: `/case/${list}/${entry.id}`, ...(known === undefined ? {} : { was: known as unknown as Json }), to };
}
