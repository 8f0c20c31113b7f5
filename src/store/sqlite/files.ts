import { createHash } from 'node:crypto';
import { MOST_FILE_BYTES } from '../../app/case-source.ts';
import { CasebookRefused } from '../../app/casebook/casebook-refused.ts';
import type { FileStore, Upload } from '../../app/casebook/casebook-store.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import type { Connection } from './connection.ts';

export const CHUNK_BYTES = 1024 * 1024; // 1 MiB: one write of the log, and what a reader holds at a time

/** Files by SHA-256 of their bytes, in chunks, each kept once however often it is attached. */
export function sqliteFiles(connection: Connection): FileStore {
  const numberOf = (sha256: string) =>
    connection.run((db) => db.selectFrom('files').select(['n', 'bytes']).where('sha256', '=', sha256).executeTakeFirst());
  const mustHave = async (sha256: string) => {
    const file = await numberOf(sha256);
    if (file === undefined) throw new CasebookRefused(refuse('file-missing', sha256, 'a file that the casebook holds'));
    return file.n;
  };
  return {
    begin: (at) => beginUpload(connection, at),
    async has(sha256) {
      const file = await numberOf(sha256);
      return file === undefined ? null : { bytes: file.bytes ?? 0 };
    },
    async *read(sha256) {
      const n = await mustHave(sha256);
      for (let place = 0; ; place += 1) {
        const chunk = await connection.run((db) =>
          db.selectFrom('chunks').select('body').where('file_n', '=', n).where('place', '=', place).executeTakeFirst(),
        );
        if (chunk === undefined) return;
        yield chunk.body;
      }
    },
    async readDerived(sha256, name) {
      const found = await connection.run((db) =>
        db
          .selectFrom('derived')
          .innerJoin('files', 'files.n', 'derived.file_n')
          .select(['media', 'body'])
          .where('files.sha256', '=', sha256)
          .where('derived.name', '=', name)
          .executeTakeFirst(),
      );
      return found === undefined ? null : { media: found.media, bytes: new Uint8Array(found.body) };
    },
    async writeDerived(sha256, name, media, bytes) {
      const row = { file_n: await mustHave(sha256), name, media, body: Buffer.from(bytes) };
      await connection.write((db) =>
        db
          .insertInto('derived')
          .values(row)
          .onConflict((clash) => clash.columns(['file_n', 'name']).doUpdateSet({ media, body: row.body }))
          .execute(),
      );
    },
    async sweep(before) {
      const gone = await connection.write((db) =>
        db.deleteFrom('files').where('sha256', 'is', null).where('begun', '<', before).executeTakeFirst(),
      );
      return Number(gone.numDeletedRows);
    },
  };
}

async function beginUpload(connection: Connection, begun: string): Promise<Upload> {
  const { n } = await connection.write((db) =>
    db.insertInto('files').values({ begun, sha256: null, bytes: null }).returning('n').executeTakeFirstOrThrow(),
  );
  const hash = createHash('sha256');
  let waiting: Uint8Array[] = [];
  let waitingBytes = 0;
  let bytes = 0;
  let places = 0;
  let ended = false;

  /** Writes full chunks, and with `all` what is left. */
  const flush = async (all: boolean) => {
    if (waitingBytes < CHUNK_BYTES && !(all && waitingBytes > 0)) return;
    const joined = Buffer.concat(waiting);
    const bodies: Buffer[] = [];
    let from = 0;
    for (; joined.length - from >= CHUNK_BYTES; from += CHUNK_BYTES) bodies.push(joined.subarray(from, from + CHUNK_BYTES));
    if (all && from < joined.length) bodies.push(joined.subarray(from));
    waiting = all || from === joined.length ? [] : [joined.subarray(from)];
    waitingBytes = waiting[0]?.length ?? 0;
    for (const body of bodies) {
      const place = places;
      places += 1;
      await connection.write((db) => db.insertInto('chunks').values({ file_n: n, place, body }).execute());
    }
  };
  const drop = () => connection.write((db) => db.deleteFrom('files').where('n', '=', n).where('sha256', 'is', null).execute());
  const mustBeOpen = () => {
    if (ended) throw new Error('this upload has ended');
  };

  return {
    async write(chunk) {
      mustBeOpen();
      if (bytes + chunk.length > MOST_FILE_BYTES)
        throw new CasebookRefused(refuse('too-large', `more than ${MOST_FILE_BYTES} bytes`, `a file of at most ${MOST_FILE_BYTES} bytes`));
      bytes += chunk.length;
      hash.update(chunk);
      waiting.push(Uint8Array.from(chunk)); // the caller may use its buffer again
      waitingBytes += chunk.length;
      await flush(false);
    },
    async finish() {
      mustBeOpen();
      await flush(true);
      ended = true;
      const sha256 = hash.digest('hex');
      await connection.write(async (db) => {
        const same = await db.selectFrom('files').select('n').where('sha256', '=', sha256).executeTakeFirst();
        if (same === undefined) await db.updateTable('files').set({ sha256, bytes }).where('n', '=', n).execute();
        else await db.deleteFrom('files').where('n', '=', n).execute();
      });
      return { sha256, bytes };
    },
    async abort() {
      if (ended) return;
      ended = true;
      await drop();
    },
  };
}
