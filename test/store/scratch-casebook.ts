import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CasebookStore } from '../../src/app/casebook/casebook-store.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { type OpenOptions, openCasebook } from '../../src/store/sqlite/open-casebook.ts';

/** A folder of its own with a place for a casebook; `drop` takes it away. */
export function scratchFolder(): { folder: string; path: string; drop(): void } {
  const folder = mkdtempSync(join(tmpdir(), 'mainsworthy-store-'));
  return { folder, path: join(folder, 'book.casebook'), drop: () => rmSync(folder, { recursive: true, force: true }) };
}

/** Opens where nothing may stand in the way. */
export async function mustOpen(path: string, options: OpenOptions = { access: 'write', make: true }): Promise<CasebookStore> {
  const store = await openCasebook(path, options);
  if (isRefusal(store)) throw new Error(sentence(store));
  return store;
}
