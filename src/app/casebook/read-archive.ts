import { Readable } from 'node:stream';
import yauzl from 'yauzl';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { MOST_ENTRIES, MOST_TEXT_BYTES, MOST_UNPACKED_BYTES } from './pack-format.ts';
import { isPlainPath } from './plain-path.ts';
import type { ArchivePart } from './write-archive.ts';

/** Bytes that can be read from any place, wherever they are. */
export interface ArchiveBytes {
  readonly bytes: number;
  /** From `from` up to but without `to`, which is always beyond it. */
  read(from: number, to: number): AsyncIterable<Uint8Array>;
}

const STORED = 0; // APPNOTE.TXT of the zip format, section 4.4.5
const KIND_BITS = 0o170000; // POSIX file type in the upper half of the external attributes of an entry made on Unix
const LINK = 0o120000;

/** The entries of an archive in their order; nothing of them is read before all of their names and sizes are in order. */
export async function readArchive(archive: ArchiveBytes): Promise<Map<string, ArchivePart> | Refusal> {
  try {
    const zip = await yauzl.fromRandomAccessReaderPromise(new Reader(archive), archive.bytes, { autoClose: false, strictFileNames: true });
    if (zip.entryCount > MOST_ENTRIES) return refuse('too-many-entries', `${zip.entryCount} entries`, `at most ${MOST_ENTRIES}`);
    const parts = new Map<string, ArchivePart>();
    const folded = new Set<string>();
    let unpacked = 0;
    for await (const entry of zip.eachEntry()) {
      const wrong = whatIsWrong(entry);
      if (wrong !== null) return wrong;
      const name = entry.fileName;
      if (folded.has(name.toLowerCase())) return refuse('name-twice', name, 'each name once', { place: name });
      folded.add(name.toLowerCase());
      unpacked += entry.uncompressedSize;
      if (unpacked > MOST_UNPACKED_BYTES)
        return refuse('too-large', `more than ${MOST_UNPACKED_BYTES} bytes`, `at most ${MOST_UNPACKED_BYTES} bytes unpacked`, {
          place: name,
        });
      if (unpacked > archive.bytes)
        return refuse('entries-overlap', `${unpacked} bytes out of an archive of ${archive.bytes}`, 'entries that share no bytes', {
          place: name,
        });
      parts.set(name, { path: name, bytes: entry.uncompressedSize, read: () => contentOf(zip, entry) });
    }
    return parts;
  } catch (error) {
    const { message } = error as Error;
    return NAME_REFUSED.test(message)
      ? refuse('path-escapes', message, 'a plain path inside the archive')
      : refuse('not-an-archive', message, 'a whole zip archive as this tool packs it');
  }
}

/** What yauzl says of a name that leads out of the archive, before an entry is seen. */
const NAME_REFUSED = /^(absolute path|invalid relative path|invalid characters in fileName)/;

function whatIsWrong(entry: yauzl.Entry): Refusal | null {
  const { fileName, compressionMethod, externalFileAttributes } = entry;
  if (((externalFileAttributes >>> 16) & KIND_BITS) === LINK)
    return refuse('link-entry', fileName, 'files only, no links', { place: fileName });
  if (!isPlainPath(fileName)) return refuse('path-escapes', fileName, 'a plain path inside the archive');
  if (compressionMethod !== STORED || entry.isEncrypted())
    return refuse('entry-compressed', fileName, 'entries stored as they are, neither compressed nor encrypted', { place: fileName });
  return null;
}

async function* contentOf(zip: yauzl.ZipFile, entry: yauzl.Entry): AsyncGenerator<Uint8Array> {
  yield* await zip.openReadStreamPromise(entry);
}

class Reader extends yauzl.RandomAccessReader {
  readonly #archive: ArchiveBytes;
  constructor(archive: ArchiveBytes) {
    super();
    this.#archive = archive;
  }
  override _readStreamForRange(start: number, end: number): Readable {
    return Readable.from(end > start ? this.#archive.read(start, end) : []);
  }
}

/** A part as text, refused when it is no UTF-8 or too long to be read at once. */
export async function readText(part: ArchivePart): Promise<string | Refusal> {
  if (part.bytes > MOST_TEXT_BYTES)
    return refuse('too-large', `${part.bytes} bytes`, `at most ${MOST_TEXT_BYTES} bytes`, { place: part.path });
  const chunks: Uint8Array[] = [];
  try {
    for await (const chunk of part.read()) chunks.push(chunk);
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(Buffer.concat(chunks));
  } catch (error) {
    return isRefusal(error) ? error : refuse('not-utf-8', (error as Error).message, 'text in UTF-8', { place: part.path });
  }
}
