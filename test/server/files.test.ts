import { createHash } from 'node:crypto';
import { crc32 } from 'node:zlib';
import exifr from 'exifr';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { exportFolder } from '../../src/app/casebook/export-folder.ts';
import { pack } from '../../src/app/casebook/pack.ts';
import { WITHOUT_PLACE } from '../../src/cli/without-place.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { withoutPlace } from '../../src/server/photo/without-place.ts';
import { spool } from '../../src/server/spool.ts';
import { makeCase, type Started, startWorkspace, toldBy } from './start-workspace.ts';

let server: Started;
let id: string;
beforeEach(async () => {
  server = await startWorkspace();
  id = await makeCase(server, 'Quay cube');
});
afterEach(() => server.drop());

interface Taken {
  sha256: string;
  bytes: number;
  media: string;
  name: string;
  understood?: { columns?: unknown };
  notUnderstood?: string;
}
const drop = (body: Uint8Array | string, name = 'x'): Promise<Response> =>
  server.ask(`/api/cases/${id}/files?name=${encodeURIComponent(name)}`, { method: 'POST', body: body as never });
const taken = async (body: Uint8Array | string, name?: string): Promise<Taken> => {
  const answer = await drop(body, name);
  if (answer.status !== 200) throw new Error(await answer.text());
  return (await answer.json()) as Taken;
};
const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** An invented photo, 40 wide and 20 high as stored, as a camera held sideways at an invented quay would write it. */
const photo = async (): Promise<Uint8Array> =>
  new Uint8Array(
    await sharp({ create: { width: 40, height: 20, channels: 3, background: '#884422' } })
      .jpeg()
      .withExif({
        IFD0: { Make: 'Invented', Model: 'Quay camera', Artist: 'Somebody' },
        IFD2: { BodySerialNumber: 'SN-0042' },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '54/1 1/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '3/1 2/1 0/1' },
      })
      .withMetadata({ orientation: 6 })
      .toBuffer(),
  );

describe('a photo', () => {
  test('is kept as it came, and leaves upright without place, person or serial number', async () => {
    const original = await photo();
    expect(await exifr.gps(Buffer.from(original)), 'the photo of this test tells its place').toMatchObject({
      latitude: expect.closeTo(54.0167, 3),
    });
    expect((await sharp(original).metadata()).orientation).toBe(6);
    const { sha256, media } = await taken(original, 'board.jpg');
    expect([sha256, media]).toEqual([hashOf(original), 'image/jpeg']);
    const kept: Uint8Array[] = [];
    for await (const chunk of server.store.files.read(sha256)) kept.push(chunk);
    expect(hashOf(Buffer.concat(kept))).toBe(sha256);

    const given = Buffer.from(await (await server.ask(`/api/cases/${id}/files/${sha256}`)).arrayBuffer());
    for (const told of ['Quay camera', 'Somebody', 'SN-0042', 'Exif']) expect(given.includes(told), told).toBe(false);
    const { width, height, orientation } = await sharp(given).metadata();
    expect([width, height, orientation ?? 1]).toEqual([20, 40, 1]);
  });

  test('has a small upright picture, made once and kept', async () => {
    const { sha256 } = await taken(await photo());
    const thumb = await server.ask(`/api/cases/${id}/files/${sha256}/thumb`);
    expect(thumb.headers.get('content-type')).toBe('image/webp');
    const bytes = Buffer.from(await thumb.arrayBuffer());
    expect(await sharp(bytes).metadata()).toMatchObject({ width: 20, height: 40, format: 'webp' });
    expect(await server.store.files.readDerived(sha256, 'thumb-320')).not.toBeNull();
  });

  test.each(['png', 'webp', 'avif', 'tiff'] as const)('in %s is told by its bytes, whatever it is called', async (format) => {
    const bytes = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#224488' } })
      .toFormat(format)
      .toBuffer();
    expect((await taken(new Uint8Array(bytes), 'sweep.csv')).media).toBe(`image/${format}`);
  });

  test('beyond 64 megapixels is refused with the number, and is not kept', async () => {
    const wide = await sharp({ create: { width: 8001, height: 8000, channels: 3, background: '#000' } })
      .png()
      .toBuffer();
    const told = await toldBy(await drop(new Uint8Array(wide)));
    expect([told.status, told.code]).toEqual([413, 'too-large']);
    expect(told.detail).toContain('64 megapixels');
    expect(await server.store.files.has(hashOf(wide))).toBeNull();
  });

  test('that breaks off is refused and is not kept', async () => {
    const noise = Buffer.alloc(3 * 256 * 256, 0).map((_, index) => (index * 7919) % 251);
    const whole = await sharp(noise, { raw: { width: 256, height: 256, channels: 3 } })
      .jpeg()
      .toBuffer();
    const cut = new Uint8Array(whole.subarray(0, whole.length / 2));
    expect((await toldBy(await drop(cut))).code).toBe('broken-picture');
    expect(await server.store.files.has(hashOf(cut))).toBeNull();
  });
});

describe('what is hidden beside the pixels of a JPEG', () => {
  const plain = async (): Promise<Buffer> =>
    sharp({ create: { width: 8, height: 8, channels: 3, background: '#224488' } })
      .jpeg()
      .toBuffer();
  const givenOut = async (bytes: Buffer): Promise<Buffer> => {
    const { sha256 } = await taken(new Uint8Array(bytes));
    return Buffer.from(await (await server.ask(`/api/cases/${id}/files/${sha256}`)).arrayBuffer());
  };
  const NOTE = Buffer.from('taken at the invented quay');
  /** A segment behind the start of the image: ITU-T T.81, B.1.1.4; its length counts itself. */
  const withSegment = (whole: Buffer, kind: number): Buffer =>
    Buffer.concat([whole.subarray(0, 2), Buffer.from([0xff, kind, 0, NOTE.length + 2]), NOTE, whole.subarray(2)]);

  test('nothing hidden: it leaves byte for byte, so that its hash stays', async () => {
    const bytes = await plain();
    expect((await givenOut(bytes)).equals(bytes)).toBe(true);
  });
  test.each([
    ['a comment', (whole: Buffer) => withSegment(whole, 0xfe)],
    ['a segment of some application', (whole: Buffer) => withSegment(whole, 0xe5)],
    ['bytes behind the end', (whole: Buffer) => Buffer.concat([whole, NOTE])],
  ])('%s stays behind', async (_, hide) => {
    const bytes = hide(await plain());
    expect(bytes.includes(NOTE)).toBe(true);
    const given = await givenOut(bytes);
    expect(given.includes(NOTE)).toBe(false);
    expect(await sharp(given).metadata()).toMatchObject({ width: 8, height: 8 });
  });
});

describe('a hostile file', () => {
  const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
  test.each([
    ['a drawing with a program', bytesOf('<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>'), /drawing|page/],
    ['a drawing behind a declaration', bytesOf('<?xml version="1.0"?><svg/>'), /drawing|page|kind/],
    ['a page', bytesOf('  <!DOCTYPE html><script>1</script>'), /drawing|page/],
    ['a HEIC picture', bytesOf('\0\0\0\x18ftypheic\0\0\0\0mif1heic'), /HEIC/],
    ['a program', new Uint8Array([0x7f, 0x45, 0x4c, 0x46, 2, 1, 1, 0]), /kind/],
    ['an empty file', new Uint8Array(0), /empty|nothing/],
    ['a JPEG that is only called one', new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3, 4]), /picture/],
  ])('%s is refused with one sentence that says what it is, and is not kept', async (_, bytes, says) => {
    const answer = await drop(bytes, 'photo.jpg');
    const told = await toldBy(answer);
    expect(told.status).toBeGreaterThanOrEqual(400);
    expect(told.detail).toMatch(says);
    expect(await server.store.files.has(hashOf(bytes))).toBeNull();
  });

  test.each([
    ['../../etc/passwd', 'passwd'],
    ['..\\..\\win.ini', 'win.ini'],
    ['a\r\nSet-Cookie: x=1.csv', 'aSet-Cookie x=1.csv'],
    ['say "hello".csv', 'say hello.csv'],
    ['gpj.\u202eexe', 'gpj.exe'],
    ['...', 'file'],
    ['\ud800.csv', '.csv'],
  ])('the name %j can do nothing', async (name, safe) => {
    const answer = await server.ask(`/api/cases/${id}/files?name=${encodeURIComponent(name.toWellFormed())}`, {
      method: 'POST',
      body: 'I,V\n0,5.1\n1,5.0\n',
    });
    const { name: kept } = (await answer.json()) as Taken;
    expect(kept.replace(/^\ufffd/, '')).toBe(safe);
  });

  test('a name of 10 kB is cut to a line', async () => {
    const { name } = await taken('I,V\n0,5.1\n', 'n'.repeat(10_000));
    expect(name.length).toBeLessThanOrEqual(120);
  });

  test('a text is given out so that no browser runs it', async () => {
    const { sha256 } = await taken('V,I\n1,2\n<script>alert(1)</script>\n', 'sweep.csv');
    const { headers } = await server.ask(`/api/cases/${id}/files/${sha256}`);
    expect(headers.get('content-disposition')).toMatch(/^attachment/);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('content-security-policy')).toContain('sandbox');
  });

  test('what announces more than 512 MiB is refused before it is read, with the number', async () => {
    const told = await toldBy(
      await server.ask(`/api/cases/${id}/files?name=x`, { method: 'POST', headers: { 'content-length': '536870913' }, body: 'x' }),
    );
    expect(told.status).toBe(413);
    expect(told.detail).toContain('536870912');
  });

  test('what begins like a JPEG and goes on beyond 64 MiB is refused with the number before it fills the memory', async () => {
    const piece = new Uint8Array(1024 ** 2);
    let pieces = 0;
    const endless = new ReadableStream({
      pull(controller) {
        controller.enqueue(pieces === 0 ? new Uint8Array([0xff, 0xd8, 0xff, 0xe0, ...piece]) : piece);
        pieces += 1;
      },
    });
    const told = await toldBy(await server.ask(`/api/cases/${id}/files?name=x.jpg`, { method: 'POST', body: endless }));
    expect([told.status, told.detail.includes('67108864')]).toEqual([413, true]);
    expect(pieces).toBeLessThan(70);
    expect((await server.store.check()).files).toBe(0);
  });

  test('a body that breaks off in the middle leaves nothing, and the next one is taken', async () => {
    const broken = new ReadableStream({
      start(controller) {
        controller.enqueue(new TextEncoder().encode('I,V\n0,5.1\n'));
      },
      pull(controller) {
        controller.error(new Error('the line went dead'));
      },
    });
    const told = await toldBy(await server.ask(`/api/cases/${id}/files?name=x`, { method: 'POST', body: broken }));
    expect(told.code).toBe('upload-cut');
    expect(told.detail).toContain('none of it was kept');
    expect(await server.store.files.has(hashOf(new TextEncoder().encode('I,V\n0,5.1\n')))).toBeNull();
    expect((await taken('I,V\n0,5.1\n1,5.0\n')).bytes).toBe('I,V\n0,5.1\n1,5.0\n'.length);
  });

  test('a file for a case that is not there is not taken', async () => {
    expect((await toldBy(await server.ask('/api/cases/none/files?name=x', { method: 'POST', body: 'I,V\n0,5\n' }))).code).toBe(
      'no-such-case',
    );
  });
});

test('an instrument file is answered with what was understood of it', async () => {
  const { media, understood } = await taken('I (A),V (V)\n0.0,5.10\n0.5,5.05\n1.0,5.00\n', 'sweep.csv');
  expect(media).toBe('text/plain');
  expect(JSON.stringify(understood)).toContain('V');
});

describe('what is hidden beside the pixels of other pictures', () => {
  const NOTE = Buffer.from('taken at the invented quay');
  const picture = (format: 'png' | 'webp' | 'avif' | 'tiff'): Promise<Buffer> =>
    sharp({ create: { width: 8, height: 8, channels: 3, background: '#224488' } })
      .toFormat(format)
      .toBuffer();

  test.each(['png', 'webp', 'avif'] as const)('a plain %s leaves byte for byte', async (format) => {
    const bytes = await picture(format);
    expect(Buffer.from(await withoutPlace(bytes, `image/${format}`)).equals(bytes)).toBe(true);
  });
  test.each(['png', 'webp', 'avif', 'tiff'] as const)('bytes behind the end of a %s stay behind', async (format) => {
    const given = Buffer.from(await withoutPlace(Buffer.concat([await picture(format), NOTE]), `image/${format}`));
    expect(given.includes(NOTE)).toBe(false);
    expect(await sharp(given).metadata()).toMatchObject({ width: 8, height: 8 });
  });
  // ISO/IEC 15948, 11.3.4.3: a keyword, a zero, the text; 5.3: length, kind, data, checksum
  test('a text in a PNG stays behind', async () => {
    const whole = await picture('png');
    const data = Buffer.concat([Buffer.from('Comment\0'), NOTE]);
    const body = Buffer.concat([Buffer.from('tEXt'), data]);
    const length = Buffer.alloc(4);
    length.writeUInt32BE(data.length);
    const sum = Buffer.alloc(4);
    sum.writeUInt32BE(crc32(body));
    const END = 12; // bytes of the last chunk
    const told = Buffer.concat([whole.subarray(0, -END), length, body, sum, whole.subarray(-END)]);
    expect(Buffer.from(await withoutPlace(told, 'image/png')).includes(NOTE)).toBe(false);
  });
  test.each(['image/heic', 'image/gif', 'video/mp4'])('%s, which nothing here can look into, does not leave', async (media) => {
    await expect(withoutPlace(new Uint8Array([1, 2, 3]), media)).rejects.toMatchObject({
      refusal: { code: 'photo-not-cleaned', got: media },
    });
  });
});

describe('a case with a photo', () => {
  const STRANGER = Buffer.from('\0\0\0\x18ftypheic taken at the invented quay');
  const attach = async (sha256: string, bytes: number, media: string): Promise<void> => {
    const answer = await server.send('POST', `/api/cases/${id}/edits`, {
      by: 'tab-1',
      base: 1,
      step: 's1',
      name: { key: 'addFile', args: {} },
      changes: [
        { at: '/case/files/board', to: { id: 'board', path: 'files/board.jpg', sha256, bytes, media } },
        { at: '/case/exhibits/photo-1', to: { id: 'photo-1', kind: 'photo', file: 'board', of: 'board' } },
      ],
    });
    expect(await answer.json()).toMatchObject({ revision: 2, conflicts: [] });
  };
  const SECRETS = ['Quay camera', 'Somebody', 'SN-0042', 'Exif'];

  test('leaves through the server, and as the command packs and exports it, without place and serial number; the casebook keeps all', async () => {
    const original = await photo();
    const { sha256, bytes, media } = await taken(original, 'board.jpg');
    await attach(sha256, bytes, media);
    const served = Buffer.from(await (await server.ask(`/api/cases/${id}/pack`)).arrayBuffer());
    const chunks: Uint8Array[] = [];
    const archive = await pack(server.store, id, { withoutPlace: WITHOUT_PLACE });
    if (isRefusal(archive)) throw new Error(archive.code);
    for await (const chunk of archive) chunks.push(chunk);
    const written = new Map<string, Buffer>();
    const target = {
      async write(path: string, content: AsyncIterable<Uint8Array>) {
        const parts: Uint8Array[] = [];
        for await (const part of content) parts.push(part);
        written.set(path, Buffer.concat(parts));
        return null;
      },
    };
    expect(await exportFolder(server.store, id, target, { withoutPlace: WITHOUT_PLACE })).toMatchObject({ revision: 2 });
    expect(Buffer.concat(chunks).equals(served), 'server and command pack the same bytes').toBe(true);
    const gone = written.get('files/board.jpg') ?? Buffer.from(original);
    expect(await exifr.gps(gone)).toBeUndefined();
    for (const secret of SECRETS) for (const left of [served, gone]) expect(left.includes(secret), secret).toBe(false);
    const kept: Uint8Array[] = [];
    for await (const chunk of server.store.files.read(sha256)) kept.push(chunk);
    expect(Buffer.concat(kept).equals(Buffer.from(original))).toBe(true);
  });

  test('of a kind that cannot be cleaned does not leave, with one sentence that says which', async () => {
    const upload = await server.store.files.begin(new Date(0).toISOString());
    await upload.write(STRANGER);
    const { sha256, bytes } = await upload.finish();
    await attach(sha256, bytes, 'image/heic');
    const told = await toldBy(await server.ask(`/api/cases/${id}/pack`));
    expect(told.code).toBe('photo-not-cleaned');
    expect(told.detail).toContain('image/heic');
  });
});

test('a spooled body gives an empty range no byte, and every other range its own', async () => {
  const spooled = await spool(new Response('0123456789').body, 100, undefined);
  if ('refused' in spooled) throw new Error(spooled.code);
  const read = async (from: number, to: number): Promise<string> => {
    const parts: Uint8Array[] = [];
    for await (const part of spooled.read(from, to)) parts.push(part);
    return Buffer.concat(parts).toString();
  };
  expect([await read(3, 3), await read(10, 10), await read(3, 4), await read(0, 10)]).toEqual(['', '', '3', '0123456789']);
  await spooled.remove();
});
