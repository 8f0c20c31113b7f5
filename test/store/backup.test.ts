import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { edit, emptyState, firstOf, minute } from './example-case.ts';
import { mustOpen, scratchFolder } from './scratch-casebook.ts';
import { startChild } from './storm/child.ts';

let scratch: ReturnType<typeof scratchFolder>;
beforeEach(() => {
  scratch = scratchFolder();
});
afterEach(() => scratch.drop());

describe('a copy of a casebook in use', () => {
  test('is of one moment and whole while another process writes without a pause', async () => {
    const child = startChild('write-storm.ts', [scratch.path, '7']);
    await child.said(150);
    const before = child.lines.length;
    const reader = await mustOpen(scratch.path, { access: 'read' });
    const copy = join(scratch.folder, 'copy');
    const shares: number[] = [];
    expect(await reader.backup(copy, (share) => shares.push(share))).toMatchObject({ bytes: readFileSync(copy).length });
    await reader.close();
    await child.said(before + 50);
    await child.kill();
    const store = await mustOpen(copy, { access: 'read' });
    const { wrong, revisions } = await store.check();
    expect(wrong).toEqual([]);
    expect(revisions).toBeGreaterThanOrEqual(before);
    expect(revisions).toBeLessThan(child.lines.length + 3);
    await store.close();
  });
  test('does not keep the writer of the same process waiting, nor take in what it writes meanwhile', async () => {
    const store = await mustOpen(scratch.path);
    const upload = await store.files.begin(minute(0));
    await upload.write(new Uint8Array(8 * 1024 * 1024).fill(1));
    await upload.finish();
    await store.cases.create('cube', firstOf(emptyState('cube')));
    let written = 1;
    let state = emptyState('cube');
    let done = false;
    const copying = store.backup(join(scratch.folder, 'copy')).finally(() => {
      done = true;
    });
    for (; !done; written += 1) {
      const next = edit(state, [{ at: '/case/sample', was: state.case['sample'], to: `S${written}` }], minute(written));
      await store.cases.append('cube', written, next.written);
      state = next.state;
      await new Promise(setImmediate);
    }
    expect(await copying).toMatchObject({ bytes: expect.any(Number) });
    expect(written).toBeGreaterThan(1);
    await store.close();
    const copy = await mustOpen(join(scratch.folder, 'copy'), { access: 'read' });
    expect((await copy.check()).wrong).toEqual([]);
    expect((await copy.cases.head('cube'))?.revision).toBeLessThanOrEqual(written);
    await copy.close();
  });
  test('is refused where a file is already, where there is no folder, and when it is stopped; nothing is left', async () => {
    const store = await mustOpen(scratch.path);
    const taken = join(scratch.folder, 'taken');
    writeFileSync(taken, 'mine');
    expect(await store.backup(taken)).toMatchObject({ code: 'file-exists' });
    expect(readFileSync(taken, 'utf8')).toBe('mine');
    expect(await store.backup(join(scratch.folder, 'no', 'copy'))).toMatchObject({ code: 'cannot-write' });
    const stopped = join(scratch.folder, 'stopped');
    expect(await store.backup(stopped, undefined, AbortSignal.abort())).toMatchObject({ code: 'stopped' });
    expect(existsSync(stopped) || existsSync(`${stopped}.part`)).toBe(false);
    await store.close();
  });
});
