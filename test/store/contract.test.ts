import { IN_MEMORY } from '../../src/store/sqlite/open-casebook.ts';
import { casebookContract } from './casebook-contract.ts';
import { mustOpen, scratchFolder } from './scratch-casebook.ts';

casebookContract('a SQLite file', {
  async open() {
    const { path, drop } = scratchFolder();
    const store = await mustOpen(path);
    return { store, done: () => store.close().then(drop) };
  },
});

casebookContract('memory', {
  async open() {
    const store = await mustOpen(IN_MEMORY);
    return { store, done: () => store.close() };
  },
});
