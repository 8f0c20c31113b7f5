import type { FileStore } from './casebook-store.ts';

/** A file of the casebook in one piece; only for what must be held whole (a picture, a table), never for a long upload. */
export async function readWhole(files: FileStore, sha256: string): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of files.read(sha256)) chunks.push(chunk);
  return new Uint8Array(Buffer.concat(chunks));
}
