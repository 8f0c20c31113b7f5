import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import type { CaseState } from '../casebook/case-state.ts';
import type { CasebookStore } from '../casebook/casebook-store.ts';
import type { Change, Json } from '../casebook/change.ts';
import type { Desk, EditAnswer } from '../casebook/desk.ts';
import type { KeptRun } from './kept-run.ts';

/** Keeps a result in a case of a casebook: its bytes first, then the edit that names them, in place of an older one of the same id. */
export async function keepRun(
  { store, desk }: { readonly store: CasebookStore; readonly desk: Desk },
  id: string,
  { bytes, attachment, computed }: Pick<KeptRun<unknown>, 'bytes' | 'attachment' | 'computed'>,
  { by, at }: { readonly by: string; readonly at: string },
): Promise<EditAnswer | Refusal> {
  const upload = await store.files.begin(at);
  await upload.write(bytes);
  await upload.finish();
  const open = await desk.open(id);
  if (isRefusal(open)) return open;
  const { state, head } = open;
  const changes = [put(state, 'files', attachment), put(state, 'computed', computed)];
  const name = { key: 'circuitRun', args: { id: computed.id } };
  const answer = await desk.edit(id, { by, base: head.revision, step: `run-${computed.id}-${at}`, name, changes });
  if (isRefusal(answer) || answer.conflicts.length === 0) return answer;
  return refuse('case-moved-on', computed.id, 'a case that nobody else gives the same result at the same moment', { place: '/computed' });
}

/** The entry in its list; the list with it, where the case has none yet. */
function put(state: CaseState, list: 'files' | 'computed', entry: { readonly id: string }): Change {
  const entries = state.case[list] as readonly { readonly id: string }[] | undefined;
  const to = entry as unknown as Json;
  if (entries === undefined) return { at: `/case/${list}`, to: [to] };
  const known = entries.find(({ id }) => id === entry.id);
  const at = `/case/${list}/${entry.id}`;
  return known === undefined ? { at, to } : { at, was: known as unknown as Json, to };
}
