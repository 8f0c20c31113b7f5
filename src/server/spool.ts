import { createReadStream } from 'node:fs';
import { type FileHandle, mkdtemp, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Refusal, refuse } from '../core/quantity/refusal.ts';

/** A body on disk for as long as it is needed, so that its end can be read before its beginning. */
export interface Spooled {
  readonly bytes: number;
  /** From `from` up to but without `to`. */
  read(from: number, to: number): AsyncIterable<Uint8Array>;
  remove(): Promise<void>;
}

/** Writes a body to a file of its own, at most `most` bytes; what is longer is refused with the number and nothing is left. */
export async function spool(
  body: ReadableStream<Uint8Array> | null,
  most: number,
  announced: string | undefined,
): Promise<Spooled | Refusal> {
  if (body === null) return refuse('no-body', 'nothing', 'the bytes of a file as the body');
  if (announced !== undefined && Number(announced) > most) return tooLarge(Number(announced), most);
  const folder = await mkdtemp(join(tmpdir(), 'mainsworthy-'));
  const remove = (): Promise<void> => rm(folder, { recursive: true, force: true });
  const path = join(folder, 'body');
  const file = await open(path, 'w');
  try {
    const bytes = await copy(body, file, most);
    if (typeof bytes !== 'number') {
      await remove();
      return bytes;
    }
    // the end of a stream of Node counts itself: an empty range has none
    return { bytes, remove, read: (from, to) => (to > from ? createReadStream(path, { start: from, end: to - 1 }) : nothing()) };
  } catch (error) {
    await remove();
    throw error;
  } finally {
    await file.close();
  }
}

async function* nothing(): AsyncGenerator<Uint8Array> {}

async function copy(body: ReadableStream<Uint8Array>, file: FileHandle, most: number): Promise<number | Refusal> {
  let bytes = 0;
  for await (const chunk of body) {
    bytes += chunk.length;
    if (bytes > most) return tooLarge(bytes, most);
    await file.writeFile(chunk);
  }
  return bytes;
}

export function tooLarge(bytes: number, most: number): Refusal {
  return refuse('too-large', `${bytes} bytes or more`, `at most ${most} bytes`);
}
