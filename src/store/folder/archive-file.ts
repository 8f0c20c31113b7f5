import { createReadStream, createWriteStream } from 'node:fs';
import { rename, rm, stat } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ArchiveBytes } from '../../app/casebook/read-archive.ts';
import { type Refusal, refuse } from '../../core/quantity/refusal.ts';

/** The bytes of an archive on the disk, read from any place. */
export async function archiveFile(path: string): Promise<ArchiveBytes | Refusal> {
  try {
    const found = await stat(path);
    if (!found.isFile()) return refuse('file-unreadable', path, 'a file');
    return {
      bytes: found.size,
      async *read(from, to) {
        if (to > from) yield* createReadStream(path, { start: from, end: to - 1 });
      },
    };
  } catch {
    return refuse('file-missing', path, 'an archive that is there');
  }
}

/** Writes a new file; it gets its name when it is whole and on disk. */
export async function writeNewFile(path: string, content: AsyncIterable<Uint8Array>): Promise<{ bytes: number } | Refusal> {
  const part = `${path}.part`;
  try {
    if (
      await stat(path).then(
        () => true,
        () => false,
      )
    )
      return refuse('file-exists', path, 'a name that no file has yet');
    await pipeline(Readable.from(content), createWriteStream(part, { flush: true }));
    await rename(part, path);
    return { bytes: (await stat(path)).size };
  } catch (error) {
    await rm(part, { force: true }).catch(() => undefined);
    const { code = '', syscall } = error as { code?: string; syscall?: string };
    if (syscall === undefined) throw error;
    return refuse('cannot-write', path, `a place that can be written to (${code})`);
  }
}
