/** Uploads a file that never ends and says every piece: FILE. */
import { writeSync } from 'node:fs';
import { mustOpen } from '../scratch-casebook.ts';

const PIECE = 300_000;
const store = await mustOpen(process.argv[2] ?? '');
const upload = await store.files.begin('2026-03-02T08:00:00Z');
for (let number = 0; ; number += 1) {
  await upload.write(new Uint8Array(PIECE).fill(number));
  writeSync(1, `${number}\n`);
}
