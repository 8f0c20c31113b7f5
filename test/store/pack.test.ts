import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import yazl from 'yazl';
import type { CasebookStore } from '../../src/app/casebook/casebook-store.ts';
import { exportFolder } from '../../src/app/casebook/export-folder.ts';
import { importFolder } from '../../src/app/casebook/import-folder.ts';
import { pack } from '../../src/app/casebook/pack.ts';
import type { ArchiveBytes } from '../../src/app/casebook/read-archive.ts';
import { stateAt } from '../../src/app/casebook/state-at.ts';
import { unpack } from '../../src/app/casebook/unpack.ts';
import { bytesPart } from '../../src/app/casebook/write-archive.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { archiveFile, writeNewFile } from '../../src/store/folder/archive-file.ts';
import { caseFolder } from '../../src/store/folder/case-folder.ts';
import { folderTarget } from '../../src/store/folder/folder-target.ts';
import { IN_MEMORY } from '../../src/store/sqlite/open-casebook.ts';
import { edit, minute } from './example-case.ts';
import { mustOpen, scratchFolder } from './scratch-casebook.ts';
import { readZip, writeZip, type ZipEntry } from './zip-bytes.ts';

const ID = 'fell-12';
const HELD = (JSON.parse(readFileSync(`examples/${ID}/case.json`, 'utf8')) as { files: unknown[] }).files.length;
const NO_PHOTOS = { withoutPlace: null };
let scratch: ReturnType<typeof scratchFolder>;
let from: CasebookStore;
let to: CasebookStore;
let packed: Buffer;

beforeEach(async () => {
  scratch = scratchFolder();
  from = await mustOpen(IN_MEMORY);
  to = await mustOpen(IN_MEMORY);
  await filled(from);
  packed = await packedOf(from);
});
afterEach(async () => {
  await from.close();
  await to.close();
  scratch.drop();
});

/** The invented Fell 12 with a history: renamed, a file let go, published, archived. */
async function filled(store: CasebookStore): Promise<void> {
  await importFolder(store, caseFolder(`examples/${ID}`), { at: minute(0), by: 'test', step: 's0' });
  let { state } = (await stateAt(store, ID))!;
  const bytes = new TextEncoder().encode('1,2\n3,4\n');
  const upload = await store.files.begin(minute(1));
  await upload.write(bytes);
  const { sha256 } = await upload.finish();
  const file = { id: 'notes', path: 'notes.csv', sha256, bytes: bytes.length, media: 'text/csv' };
  const edits = [
    [{ at: '/case/sample', was: 'A', to: 'B' }],
    [{ at: '/case/files/notes', to: file }],
    [{ at: '/case/files/notes', was: file }],
  ];
  for (const [index, changes] of edits.entries()) {
    const next = edit(state, changes, minute(index + 2));
    await store.cases.append(ID, index + 1, next.written, index === 1 ? next.state : undefined);
    state = next.state;
  }
  const published = new TextEncoder().encode('{"published":"once"}\n');
  await store.cases.keepAssessment(ID, { revision: 2, at: minute(9), sha256: hashOf(published), bytes: published });
  await store.cases.setArchived(ID, minute(10));
}

const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

async function packedOf(store: CasebookStore, options: Parameters<typeof pack>[2] = NO_PHOTOS): Promise<Buffer> {
  const archive = await pack(store, ID, options);
  if (isRefusal(archive)) throw new Error(sentence(archive));
  const chunks: Uint8Array[] = [];
  for await (const chunk of archive) chunks.push(chunk);
  return Buffer.concat(chunks);
}

function bytesOf(buffer: Buffer): ArchiveBytes {
  return {
    bytes: buffer.length,
    async *read(start, end) {
      if (end <= start) throw new Error('nothing was asked for');
      yield buffer.subarray(start, end);
    },
  };
}

/** The refusal of an archive; the casebook must be as empty as before. */
async function refusalOf(archive: Buffer) {
  const refusal = await unpack(to, bytesOf(archive), minute(20));
  if (!isRefusal(refusal)) throw new Error('it was taken');
  expect(sentence(refusal).length).toBeGreaterThan(20);
  expect(await to.check()).toEqual({ cases: 0, revisions: 0, files: 0, bytes: 0, wrong: [] });
  return refusal.code;
}

describe('a case that is packed and unpacked', () => {
  test('arrives with every revision, state, file and published Assessment', async () => {
    expect(await unpack(to, bytesOf(packed), minute(20))).toMatchObject({ id: ID, revision: 4, archived: minute(10) });
    expect(await to.cases.revisions(ID, 1)).toEqual(await from.cases.revisions(ID, 1));
    expect(await to.cases.states(ID)).toEqual(await from.cases.states(ID));
    expect(await to.cases.assessments(ID)).toEqual(await from.cases.assessments(ID));
    expect((await stateAt(to, ID, 3))?.state.case['files']).toHaveLength(HELD + 1);
    expect(await to.check()).toEqual(await from.check());
  });
  test('gives the same bytes again, here and after the journey', async () => {
    expect(hashOf(await packedOf(from))).toBe(hashOf(packed));
    await unpack(to, bytesOf(packed), minute(20));
    expect(hashOf(await packedOf(to))).toBe(hashOf(packed));
  });
  test('is refused where the casebook has it already', async () => {
    expect(await unpack(from, bytesOf(packed), minute(20))).toMatchObject({ code: 'case-exists' });
  });
  test('travels as a file', async () => {
    const path = join(scratch.folder, 'fell.zip');
    const archive = await pack(from, ID, NO_PHOTOS);
    if (isRefusal(archive)) throw new Error(sentence(archive));
    expect(await writeNewFile(path, archive)).toEqual({ bytes: packed.length });
    expect(readFileSync(path).equals(packed)).toBe(true);
    const file = await archiveFile(path);
    if (isRefusal(file)) throw new Error(sentence(file));
    expect(await unpack(to, file, minute(20))).toMatchObject({ id: ID });
  });
  test('holds a case folder that opens by itself', async () => {
    const entries = readZip(packed);
    const target = folderTarget(join(scratch.folder, 'folder'));
    for (const { name, data } of entries.filter((entry) => entry.name.startsWith('case/')))
      await target.write(name, bytesPart(name, data).read());
    expect(entries.map(({ name }) => name)).toContain('case/load-sweep-230.csv');
    const again = await importFolder(to, caseFolder(join(scratch.folder, 'folder', 'case')), { at: minute(0), by: 'test', step: 's' });
    expect(again).toMatchObject({ id: ID, revision: 1 });
  });
});

describe('an archive that is not as it was packed is refused whole', () => {
  const changed = (change: (entries: ZipEntry[]) => ZipEntry[]) => writeZip(change(readZip(packed)));

  test('the test writes archives as the tool does', () => expect(changed((entries) => entries).equals(packed)).toBe(true));

  test('any single changed byte, wherever it stands', async () => {
    const step = Math.floor(packed.length / 400);
    for (let at = 0; at < packed.length; at += step) {
      const other = Buffer.from(packed);
      other[at] = other[at]! ^ (1 << (at & 7));
      await refusalOf(other);
    }
  });
  test('any byte of the first and last headers', async () => {
    for (const at of [...Array(60).keys(), ...Array.from({ length: 160 }, (_, back) => packed.length - 1 - back)]) {
      const other = Buffer.from(packed);
      other[at] = other[at]! ^ 0x41;
      await refusalOf(other);
    }
  });
  test('cut short anywhere, or with something after it', async () => {
    for (const share of [0, 0.1, 0.5, 0.9, 0.999])
      expect(await refusalOf(packed.subarray(0, Math.floor(packed.length * share)))).toBe('not-an-archive');
    expect(await refusalOf(Buffer.concat([packed, Buffer.from('x')]))).toBe('not-an-archive');
    expect(await refusalOf(Buffer.concat([Buffer.from('x'), packed]))).toMatch(/not-an-archive|layout-differs/);
  });
  test('an entry missing', async () => {
    expect(await refusalOf(changed((entries) => entries.filter(({ name }) => name !== 'case/load-sweep-230.csv')))).toBe('entry-missing');
    expect(await refusalOf(changed((entries) => entries.filter(({ name }) => name !== 'manifest.json')))).toBe('entry-missing');
  });
  test('an entry too many', async () =>
    expect(await refusalOf(changed((entries) => [...entries, { name: 'case/more.csv', data: Buffer.from('1') }]))).toBe('entry-extra'));
  test.each([
    '../out.csv',
    '/etc/out.csv',
    'case/../../out.csv',
    'C:/out.csv',
    'case\\out.csv',
    'case//out.csv',
    'case/.',
    'case/nul\u0000.csv',
  ])('a path that leads elsewhere: %j', async (name) =>
    expect(await refusalOf(changed((entries) => [...entries, { name, data: Buffer.from('1') }]))).toBe('path-escapes'),
  );
  test('a name twice, also in other letters', async () => {
    expect(await refusalOf(changed((entries) => [...entries, entries.at(-1)!]))).toBe('name-twice');
    expect(await refusalOf(changed((entries) => [...entries, { name: 'CASE/case.json', data: Buffer.from('{}') }]))).toBe('name-twice');
  });
  test('a link', async () =>
    expect(
      await refusalOf(changed((entries) => [...entries, { name: 'case/link', data: Buffer.from('/etc/passwd'), mode: 0o120777 }])),
    ).toBe('link-entry'));
  test('more than 10,000 entries', async () =>
    expect(
      await refusalOf(
        changed((entries) => [...entries, ...Array.from({ length: 10_000 }, (_, n) => ({ name: `case/${n}`, data: Buffer.alloc(0) }))]),
      ),
    ).toBe('too-many-entries'));
  test('more than 2 GiB unpacked, by what it says of itself', async () =>
    expect(await refusalOf(changed((entries) => [...entries, { name: 'case/huge', data: Buffer.from('1'), saidBytes: 2 ** 31 + 1 }]))).toBe(
      'too-large',
    ));
  test('entries that share their bytes', async () =>
    expect(await refusalOf(changed((entries) => [...entries, { name: 'case/huge', data: Buffer.from('1'), saidBytes: 100_000_000 }]))).toBe(
      'entries-overlap',
    ));
  test('compressed entries, which a bomb is made of', async () => {
    const zip = new yazl.ZipFile();
    zip.addBuffer(Buffer.alloc(200 * 1024 * 1024), 'case/bomb');
    zip.end();
    const chunks: Buffer[] = [];
    for await (const chunk of zip.outputStream) chunks.push(chunk as Buffer);
    const bomb = Buffer.concat(chunks);
    expect(bomb.length).toBeLessThan(1024 * 1024);
    expect(await refusalOf(bomb)).toBe('entry-compressed');
  });
  test('another content with a manifest that still has the old hash', async () =>
    expect(
      await refusalOf(
        changed((entries) =>
          entries.map((entry) => (entry.name === 'case/load-sweep-230.csv' ? { ...entry, data: Buffer.from('1') } : entry)),
        ),
      ),
    ).toBe('hash-differs'));
  test('a newer format', async () =>
    expect(await refusalOf(withManifest((manifest) => ({ ...manifest, format: 'mainsworthy-pack/2' })))).toBe('pack-newer'));
  test('a manifest with another shape', async () =>
    expect(await refusalOf(withManifest((manifest) => ({ ...manifest, more: 1 })))).toBe('wrong-shape'));
  test('no zip at all', async () => expect(await refusalOf(Buffer.from('a shopping list'.repeat(40)))).toBe('not-an-archive'));

  /** Every hash of the manifest right, and the history yet broken. */
  const rehashed = (name: string, change: (text: string) => string) => {
    const entries = readZip(packed).map((entry) =>
      entry.name === name ? { ...entry, data: Buffer.from(change(entry.data.toString())) } : entry,
    );
    return writeZip(
      entries.map((entry) => {
        if (entry.name !== 'manifest.json') return entry;
        const manifest = JSON.parse(entry.data.toString()) as { entries: { path: string; bytes: number; sha256: string }[] };
        const listed = manifest.entries.map((one) => {
          const data = entries.find((other) => other.name === one.path)!.data;
          return { ...one, bytes: data.length, sha256: hashOf(data) };
        });
        return { ...entry, data: Buffer.from(`${JSON.stringify({ ...manifest, entries: listed }, null, 1)}\n`) };
      }),
    );
  };
  const withManifest = (change: (manifest: object) => object) =>
    changed((entries) =>
      entries.map((entry) =>
        entry.name === 'manifest.json'
          ? { ...entry, data: Buffer.from(JSON.stringify(change(JSON.parse(entry.data.toString()) as object))) }
          : entry,
      ),
    );
  test.each([
    ['a reading changed in a kept state', 'history/states.jsonl', (text: string) => text.replace('"sample":"A"', '"sample":"C"')],
    [
      'a revision left out',
      'history/revisions.jsonl',
      (text: string) =>
        text
          .split('\n')
          .filter((_, at) => at !== 1)
          .join('\n'),
    ],
    ['a change that does not fit', 'history/revisions.jsonl', (text: string) => text.replace('"was":"A"', '"was":"Z"')],
    ['a document that is not the newest state', 'case/case.json', (text: string) => text.replace('"B"', '"C"')],
    ['a name without canonical text', 'history/states.jsonl', (text: string) => text.replace('"drafts":{}', '"drafts":{"1":"x"}')],
    [
      'nesting without end',
      'history/states.jsonl',
      (text: string) => text.replace('"drafts":{}', `"drafts":{"x":${'['.repeat(200_000)}${']'.repeat(200_000)}}`),
    ],
    ['a published Assessment with other bytes', 'history/assessments.jsonl', (text: string) => text.replace('"bytes":"ey', '"bytes":"ez')],
  ])('%s, its manifest made to match', async (_, name, change) => {
    const other = rehashed(name, change);
    expect(other.equals(packed)).toBe(false);
    expect(await refusalOf(other)).toBe('history-broken');
  });
});

describe('photos', () => {
  const photo = Buffer.from('a photo taken at 54.1,-1.2 of a bench');
  const clean = async (bytes: Uint8Array) => Buffer.from(Buffer.from(bytes).toString().replace('54.1,-1.2', ''));
  beforeEach(async () => {
    const upload = await from.files.begin(minute(30));
    await upload.write(photo);
    const { sha256, bytes } = await upload.finish();
    const { state } = (await stateAt(from, ID))!;
    const file = { id: 'photo', path: 'photo.jpg', sha256, bytes, media: 'image/jpeg' };
    await from.cases.append(ID, 4, edit(state, [{ at: '/case/files/photo', to: file }], minute(31)).written);
  });
  test('do not leave where nothing can take their place out', async () => {
    expect(await pack(from, ID, NO_PHOTOS)).toMatchObject({ code: 'photo-not-cleaned' });
    expect(await exportFolder(from, ID, folderTarget(join(scratch.folder, 'out')), NO_PHOTOS)).toMatchObject({ code: 'photo-not-cleaned' });
  });
  test('that cannot be opened do not leave', async () => {
    const withoutPlace = () => Promise.reject(new Error('no picture'));
    expect(await pack(from, ID, { withoutPlace })).toMatchObject({ code: 'photo-not-cleaned', got: 'photo.jpg (no picture)' });
  });
  test('leave in an archive without their place, and the whole history goes by the hash that they then have', async () => {
    const archive = await packedOf(from, { withoutPlace: clean });
    expect(archive.includes('54.1,-1.2')).toBe(false);
    expect(await unpack(to, bytesOf(archive), minute(40))).toMatchObject({ revision: 5 });
    expect((await to.check()).wrong).toEqual([]);
    expect(await to.files.has(hashOf(await clean(photo)))).not.toBeNull();
    expect(await to.files.has(hashOf(photo))).toBeNull();
  });
  test('leave in a folder without their place, and the folder opens', async () => {
    const out = join(scratch.folder, 'out');
    expect(await exportFolder(from, ID, folderTarget(out), { withoutPlace: clean })).toMatchObject({ id: ID });
    expect(readFileSync(join(out, 'photo.jpg'), 'utf8')).toBe('a photo taken at  of a bench');
    expect(await importFolder(to, caseFolder(out), { at: minute(0), by: 'test', step: 's' })).toMatchObject({ id: ID });
  });
});

describe('a case folder', () => {
  test.each(['beck-5', 'fell-12', 'moss-trio', 'tarn-30'])('%s comes out of a casebook byte for byte as it went in', async (name) => {
    expect(await importFolder(to, caseFolder(`examples/${name}`), { at: minute(0), by: 'test', step: 's' })).toMatchObject({ id: name });
    const out = join(scratch.folder, name);
    expect(await exportFolder(to, name, folderTarget(out), NO_PHOTOS)).toMatchObject({ id: name });
    expect(readFileSync(join(out, 'case.json'), 'utf8')).toBe(readFileSync(`examples/${name}/case.json`, 'utf8'));
    const files = (JSON.parse(readFileSync(join(out, 'case.json'), 'utf8')) as { files: { path: string }[] }).files;
    expect(files.length).toBeGreaterThan(0);
    for (const { path } of files) expect(readFileSync(join(out, path)).equals(readFileSync(join('examples', name, path)))).toBe(true);
  });
  test('is not written over', async () => {
    const target = folderTarget(join(scratch.folder, 'out'));
    expect(await exportFolder(from, ID, target, NO_PHOTOS)).toMatchObject({ id: ID });
    expect(await exportFolder(from, ID, target, NO_PHOTOS)).toMatchObject({ code: 'file-exists' });
  });
  test('that does not open as a case is refused with everything that is wrong, and nothing of it is kept', async () => {
    expect(await importFolder(to, caseFolder(scratch.folder), { at: minute(0), by: 'test', step: 's' })).toMatchObject([
      { code: 'file-missing' },
    ]);
    expect(await importFolder(from, caseFolder(`examples/${ID}`), { at: minute(0), by: 'test', step: 's' })).toMatchObject([
      { code: 'case-exists' },
    ]);
    expect(await to.check()).toMatchObject({ cases: 0, files: 0 });
  });
});
