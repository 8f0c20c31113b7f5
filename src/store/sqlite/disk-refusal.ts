import { type Refusal, refuse } from '../../core/quantity/refusal.ts';

/** SQLite's result codes (sqlite.org/rescode.html) that tell of the disk or of another process, never of a mistake of ours. */
const REFUSALS: readonly (readonly [start: string, code: string, expected: string])[] = [
  ['SQLITE_FULL', 'disk-full', 'room on the disk: nothing of this was kept, everything before it is'],
  ['SQLITE_READONLY', 'casebook-read-only', 'a casebook that can be written to'],
  ['SQLITE_BUSY', 'casebook-in-use', 'a casebook that no other process holds'],
  ['SQLITE_LOCKED', 'casebook-in-use', 'a casebook that no other process holds'],
  ['SQLITE_NOTADB', 'not-a-casebook', 'a casebook of this tool'],
  ['SQLITE_CORRUPT', 'casebook-damaged', 'an undamaged casebook; take the last copy that was made of it'],
  ['SQLITE_IOERR', 'disk-failed', 'a disk that reads and writes; nothing of this was kept'],
  ['SQLITE_CANTOPEN', 'casebook-unreadable', 'a place where a casebook can be opened'],
];

/** What an error of the database means to the person; null when it is a defect of ours. */
export function diskRefusal(error: unknown, path: string): Refusal | null {
  const code = (error as { code?: unknown } | null)?.code;
  if (typeof code !== 'string') return null;
  const known = REFUSALS.find(([start]) => code.startsWith(start));
  return known === undefined ? null : refuse(known[1], path, known[2]);
}
