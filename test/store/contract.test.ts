import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { IN_MEMORY, openCasebook } from '../../src/store/sqlite/open-casebook.ts';
import { casebookContract } from './casebook-contract.ts';

async function opened(path: string) {
  const store = await openCasebook(path, { access: 'write', make: true });
  if (isRefusal(store)) throw new Error(sentence(store));
  return store;
}

casebookContract('a SQLite file', {
  async open() {
    const folder = await mkdtemp(join(tmpdir(), 'mainsworthy-store-'));
    const store = await opened(join(folder, 'book.casebook'));
    return {
      store,
      async done() {
        await store.close();
        await rm(folder, { recursive: true });
      },
    };
  },
});

casebookContract('memory', {
  async open() {
    const store = await opened(IN_MEMORY);
    return { store, done: () => store.close() };
  },
});
