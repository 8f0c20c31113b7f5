import type { Change } from '../../app/casebook/change.ts';
import type { TakenFile } from '../api/casebook.ts';
import { idFromName } from '../state/place-parts.ts';

/** The record of a file that the casebook holds, as a change that brings it into the case. Its path is safe in any folder. */
export function toFileRecord(
  taken: TakenFile,
  ids: readonly string[],
  settled: Readonly<Record<string, string>> = {},
): { readonly id: string; readonly change: Change } {
  const id = idFromName(taken.name.replace(/\.[^.]*$/, ''), ids);
  const to = {
    id,
    path: `files/${taken.sha256.slice(0, 12)}-${taken.name.replace(/[^\w.-]+/g, '-')}`,
    sha256: taken.sha256,
    bytes: taken.bytes,
    media: taken.media,
    ...(Object.keys(settled).length === 0 ? {} : { settled }),
  };
  return { id, change: { at: `/case/files/${id}`, to } };
}
