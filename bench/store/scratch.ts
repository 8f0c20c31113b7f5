import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CasebookStore } from '../../src/app/casebook/casebook-store.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { type OpenOptions, openCasebook } from '../../src/store/sqlite/open-casebook.ts';

/** Runs with a folder of its own, which is taken away afterwards. */
export async function inScratch(work: (folder: string) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'mainsworthy-bench-'));
  try {
    await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export async function opened(path: string, options: OpenOptions = { access: 'write', make: true }): Promise<CasebookStore> {
  const store = await openCasebook(path, options);
  if (isRefusal(store)) throw new Error(sentence(store));
  return store;
}
