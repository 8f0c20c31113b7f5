import type { Change, Json } from '../../app/casebook/change.ts';
import { CAPTURE_PAGE } from '../../present/words/capture-page-words.ts';
import type { TakenFile } from '../api/casebook.ts';
import { toFileRecord } from '../part/file-record.ts';
import { idFromName } from '../state/place-parts.ts';

/** What one tap keeps: the changes, those that take it back, and what it is in a few words. */
export interface Kept {
  readonly words: string;
  readonly changes: readonly Change[];
  /** Where to look whether it stands. */
  readonly at: string;
  readonly back: readonly Change[];
}

/** What goes with every exhibit from a phone. */
export interface Now {
  /** A word that no other tab gives. */
  readonly id: string;
  readonly day?: string | undefined;
  /** Local wall clock, "2026-03-04T10:31:05". */
  readonly at: string;
}
type Listed = { readonly id: string; readonly name: string };

export function keepPhoto(taken: TakenFile, of: string, files: readonly string[], now: Now): Kept {
  const file = toFileRecord(taken, files);
  const exhibit = toExhibit('photo', now, { file: file.id, of });
  return kept(CAPTURE_PAGE.photoOf(of), [file.change, exhibit]);
}

/** A temperature at a place that is there, or at a new one named here. */
export function keepTemperature(
  place: Listed | { readonly newName: string },
  text: string,
  by: string,
  places: readonly string[],
  now: Now,
): Kept {
  const isNew = 'newName' in place;
  const id = isNew ? idFromName(place.newName, places) : place.id;
  const name = isNew ? place.newName : place.name;
  const made: Change[] = isNew ? [{ at: `/case/places/${id}`, to: { id, name } }] : [];
  const rows: Json = [{ id: 's-1', place: id, value: text, by }];
  return kept(`${name}: ${text}`, [...made, toExhibit('spots', now, { under: {}, rows })]);
}

export function keepDistance(from: Listed, to: Listed, path: string, method: string, text: string, now: Now): Kept {
  return kept(CAPTURE_PAGE.fromTo(from.name, to.name, text), [
    toExhibit('distance', now, { from: from.id, to: to.id, path, method, value: text }),
  ]);
}

/** A note stands with an exhibit; one that is there already keeps its own lines. */
export function keepNote(exhibit: string, was: string | undefined, text: string): Kept {
  const to = was === undefined || was === '' ? text : `${was}\n${text}`;
  const at = `/case/exhibits/${exhibit}/note`;
  return { words: CAPTURE_PAGE.noteText(text), changes: [{ at, was, to }], at, back: [{ at, was: to, to: was }] };
}

function toExhibit(kind: string, { id, day, at }: Now, more: Readonly<Record<string, Json>>): Change {
  return { at: `/case/exhibits/${id}`, to: { id, kind, ...(day === undefined ? {} : { day }), at, ...more } };
}

function kept(words: string, changes: readonly Change[]): Kept {
  const back = changes.toReversed().map(({ at, to }) => ({ at, was: to, to: undefined }));
  return { words, changes, at: back[0]?.at ?? '', back };
}

/** The wall clock of this device as the case writes times. */
export function localTimeOf(date: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  const day = [date.getFullYear(), two(date.getMonth() + 1), two(date.getDate())].join('-');
  return `${day}T${[date.getHours(), date.getMinutes(), date.getSeconds()].map(two).join(':')}`;
}
