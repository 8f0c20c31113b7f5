import { CasebookRefused } from '../app/casebook/casebook-refused.ts';
import type { CasebookStore } from '../app/casebook/casebook-store.ts';
import { isRefusal } from '../core/quantity/refusal.ts';
import type { OpenOptions } from '../store/sqlite/open-casebook.ts';
import { Refused } from './output.ts';

/** Opens a casebook for one piece of work and closes it whatever happens. */
export async function withCasebook<T>(path: string, options: OpenOptions, work: (store: CasebookStore) => Promise<T>): Promise<T> {
  const { openCasebook } = await import('../store/sqlite/open-casebook.ts'); // a case of a folder needs no database
  const store = await openCasebook(path, options);
  if (isRefusal(store)) throw new Refused([store]);
  try {
    return await work(store);
  } catch (error) {
    throw error instanceof CasebookRefused ? new Refused([error.refusal]) : error;
  } finally {
    await store.close();
  }
}
