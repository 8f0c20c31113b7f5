/** What an acknowledged edit, an upload and a copy cost beside the plain file operation that does the same to the disk. */
import { closeSync, copyFileSync, fsyncSync, openSync, rmSync, statSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { edit, emptyState, firstOf, minute } from '../../test/store/example-case.ts';
import { line, type Measured } from '../measure.ts';
import { inScratch, opened } from './scratch.ts';

const EDITS = 1000;
const UPLOAD_MIB = 200;
const COPIES = 5;
const MIB = 1024 * 1024;

await inScratch(async (folder) => {
  const path = join(folder, 'book');
  const store = await opened(path);
  let state = emptyState('cube');
  await store.cases.create('cube', firstOf(state));
  const times: number[] = [];
  let bytes = 0;
  for (let revision = 1; revision <= EDITS; revision += 1) {
    const next = edit(state, [{ at: '/case/sample', was: state.case['sample'], to: `S${revision}` }], minute(revision));
    bytes = JSON.stringify(next.written).length;
    const start = performance.now();
    const saved = await store.cases.append('cube', revision, next.written);
    times.push(performance.now() - start);
    if (saved === 'behind' || isRefusal(saved)) throw new Error('an edit was not taken');
    state = next.state;
  }
  const plain = openSync(join(folder, 'plain'), 'a');
  const text = Buffer.alloc(bytes, 'x');
  const plainTimes = Array.from({ length: EDITS }, () => {
    const start = performance.now();
    writeSync(plain, text);
    fsyncSync(plain);
    return performance.now() - start;
  });
  closeSync(plain);
  const reference = summed(plainTimes);
  console.log(line(`append ${bytes} bytes to a file, fsync (reference)`, reference));
  console.log(line('an edit until it is acknowledged', summed(times), { name: 'append and fsync', median: reference.median }));

  const piece = new Uint8Array(MIB);
  const uploadStart = performance.now();
  const upload = await store.files.begin(minute(0));
  for (let number = 0; number < UPLOAD_MIB; number += 1) {
    piece.fill(number);
    await upload.write(piece);
  }
  const { sha256 } = await upload.finish();
  const uploadS = (performance.now() - uploadStart) / 1000;
  const fileStart = performance.now();
  const file = openSync(join(folder, 'large'), 'w');
  for (let number = 0; number < UPLOAD_MIB; number += 1) {
    writeSync(file, piece);
    fsyncSync(file);
  }
  closeSync(file);
  const fileS = (performance.now() - fileStart) / 1000;
  console.log(
    `${UPLOAD_MIB} MiB uploaded in ${uploadS.toFixed(2)} s, ${(uploadS / fileS).toFixed(2)} × a plain file with an fsync each MiB (${fileS.toFixed(2)} s)`,
  );
  const readStart = performance.now();
  let read = 0;
  for await (const chunk of store.files.read(sha256)) read += chunk.length;
  console.log(`${read / MIB} MiB read back in ${((performance.now() - readStart) / 1000).toFixed(2)} s`);

  const [copies, plainCopies]: [number[], number[]] = [[], []];
  for (let number = 0; number < COPIES; number += 1) {
    const copy = join(folder, `copy-${number}`);
    const start = performance.now();
    await store.backup(copy);
    copies.push(performance.now() - start);
    const plainStart = performance.now();
    copyFileSync(copy, `${copy}-plain`);
    plainCopies.push(performance.now() - plainStart);
    rmSync(copy);
    rmSync(`${copy}-plain`);
  }
  const copied = summed(plainCopies);
  console.log(line('the file copied by the system (reference)', copied));
  console.log(
    line(`backup of ${Math.round(statSync(path).size / MIB)} MiB`, summed(copies), { name: 'a plain copy', median: copied.median }),
  );
  const checkStart = performance.now();
  const { revisions, wrong } = await store.check();
  console.log(
    `check of ${revisions} revisions and ${UPLOAD_MIB} MiB: ${((performance.now() - checkStart) / 1000).toFixed(2)} s, ${wrong.length} wrong`,
  );
  await store.close();
});

function summed(times: readonly number[]): Measured {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
  return { min: sorted[0] ?? 0, median: at(0.5), spread: at(0.75) - at(0.25) };
}
