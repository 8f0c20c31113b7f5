/** Opens a casebook for writing, which brings it up to the newest version, and says before and after: FILE. */
import { writeSync } from 'node:fs';
import { mustOpen } from '../scratch-casebook.ts';

writeSync(1, 'opening\n');
const store = await mustOpen(process.argv[2] ?? '');
writeSync(1, 'opened\n');
await store.close();
