import { crc32 } from 'node:zlib';

/** An entry of a zip as its bytes; what a hostile one says of itself can be set apart from what it is. */
export interface ZipEntry {
  readonly name: string;
  readonly data: Buffer;
  readonly mode?: number;
  readonly saidBytes?: number;
}

// Layout by APPNOTE.TXT 6.3.10, sections 4.3.7 (local header), 4.3.9 (data descriptor), 4.3.12 (central header), 4.3.16 (end), from memory.
const LOCAL = 0x04034b50;
const DESCRIPTOR = 0x08074b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const UTF8_AND_DESCRIPTOR = 0x0808;
const FIRST_DAY = 0x0021; // 1980-01-01
const MADE_BY_UNIX = 0x033f;
const VERSION = 20;

export function readZip(zip: Buffer): ZipEntry[] {
  const entries: ZipEntry[] = [];
  let at = zip.readUInt32LE(zip.length - 22 + 16);
  for (; zip.readUInt32LE(at) === CENTRAL; ) {
    const [bytes, nameLength, local] = [zip.readUInt32LE(at + 24), zip.readUInt16LE(at + 28), zip.readUInt32LE(at + 42)];
    const start = local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28);
    entries.push({ name: zip.toString('utf8', at + 46, at + 46 + nameLength), data: zip.subarray(start, start + bytes) });
    at += 46 + nameLength + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32);
  }
  return entries;
}

export function writeZip(entries: readonly ZipEntry[]): Buffer {
  const parts: Buffer[] = [];
  const central: Buffer[] = [];
  let offset = 0;
  for (const { name, data, mode = 0o100644, saidBytes = data.length } of entries) {
    const raw = Buffer.from(name);
    const sum = crc32(data);
    const local = fields(
      [4, LOCAL],
      [2, VERSION],
      [2, UTF8_AND_DESCRIPTOR],
      [2, 0],
      [2, 0],
      [2, FIRST_DAY],
      [4, 0],
      [4, 0],
      [4, 0],
      [2, raw.length],
      [2, 0],
    );
    const descriptor = fields([4, DESCRIPTOR], [4, sum], [4, saidBytes], [4, saidBytes]);
    central.push(
      fields(
        [4, CENTRAL],
        [2, MADE_BY_UNIX],
        [2, VERSION],
        [2, UTF8_AND_DESCRIPTOR],
        [2, 0],
        [2, 0],
        [2, FIRST_DAY],
        [4, sum],
        [4, saidBytes],
        [4, saidBytes],
      ),
      fields([2, raw.length], [2, 0], [2, 0], [2, 0], [2, 0], [4, (mode << 16) >>> 0], [4, offset]),
      raw,
    );
    parts.push(local, raw, data, descriptor);
    offset += local.length + raw.length + data.length + descriptor.length;
  }
  const directory = Buffer.concat(central);
  const end = fields([4, END], [2, 0], [2, 0], [2, entries.length], [2, entries.length], [4, directory.length], [4, offset], [2, 0]);
  return Buffer.concat([...parts, directory, end]);
}

/** Little-endian numbers of 2 or 4 bytes. */
function fields(...values: readonly (readonly [bytes: 2 | 4, value: number])[]): Buffer {
  return Buffer.concat(
    values.map(([bytes, value]) => {
      const field = Buffer.alloc(bytes);
      if (bytes === 2) field.writeUInt16LE(value);
      else field.writeUInt32LE(value);
      return field;
    }),
  );
}
