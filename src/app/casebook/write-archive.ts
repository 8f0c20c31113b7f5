import { Readable } from 'node:stream';
import yazl from 'yazl';

export interface ArchivePart {
  readonly path: string;
  readonly bytes: number;
  read(): AsyncIterable<Uint8Array>;
}

/**
 * A zip whose bytes follow from its parts alone. Nothing is compressed, because compressed bytes differ between versions of the compressor;
 * every time is the first moment a zip can name, written in local time so that every time zone writes the same digits.
 */
export async function* writeArchive(parts: readonly ArchivePart[]): AsyncGenerator<Uint8Array> {
  const zip = new yazl.ZipFile();
  const options = { compress: false, mtime: new Date(1980, 0, 1), forceDosTimestamp: true, mode: 0o100644 };
  const out = zip.outputStream as Readable;
  zip.on('error', (error: Error) => out.destroy(error));
  for (const part of parts)
    zip.addReadStreamLazy(part.path, { ...options, size: part.bytes }, (give) => {
      const stream = Readable.from(part.read());
      stream.on('error', (error) => out.destroy(error));
      give(null, stream);
    });
  zip.end();
  yield* out;
}

export function textPart(path: string, text: string): ArchivePart {
  const bytes = new TextEncoder().encode(text);
  return bytesPart(path, bytes);
}

export function bytesPart(path: string, bytes: Uint8Array): ArchivePart {
  return {
    path,
    bytes: bytes.length,
    async *read() {
      if (bytes.length > 0) yield bytes;
    },
  };
}
