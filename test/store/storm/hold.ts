/** Opens a casebook for writing and keeps it: FILE. */
import { writeSync } from 'node:fs';
import { mustOpen } from '../scratch-casebook.ts';

const store = await mustOpen(process.argv[2] ?? '');
writeSync(1, 'held\n');
setInterval(() => void store, 60_000);
