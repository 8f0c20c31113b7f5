import type { Database } from 'better-sqlite3';
import { type Kysely, sql } from 'kysely';
import { CasebookRefused } from '../../app/casebook/casebook-refused.ts';
import type { Refusal } from '../../core/quantity/refusal.ts';
import { diskRefusal } from './disk-refusal.ts';
import type { CasebookTables } from './tables.ts';

/** The one connection of an open casebook, and the two ways of telling that the disk refused. */
export class Connection {
  readonly path: string;
  readonly sqlite: Database;
  readonly db: Kysely<CasebookTables>;

  constructor(path: string, sqlite: Database, db: Kysely<CasebookTables>) {
    this.path = path;
    this.sqlite = sqlite;
    this.db = db;
  }

  /** Runs a read or a single statement; a refusal of the disk is thrown. */
  async run<T>(work: (db: Kysely<CasebookTables>) => Promise<T>): Promise<T> {
    try {
      return await work(this.db);
    } catch (error) {
      throw this.#asThrown(error);
    }
  }

  /**
   * All or nothing, and on disk before it returns. The rollback is asked for only where one is due: after a full disk SQLite has often
   * rolled back by itself, and a second rollback would hide the reason.
   */
  async write<T>(work: (db: Kysely<CasebookTables>) => Promise<T>): Promise<T> {
    return this.run((all) =>
      all.connection().execute(async (db) => {
        await sql`BEGIN IMMEDIATE`.execute(db);
        try {
          const result = await work(db);
          await sql`COMMIT`.execute(db);
          return result;
        } catch (error) {
          if (this.sqlite.inTransaction) await sql`ROLLBACK`.execute(db);
          throw error;
        }
      }),
    );
  }

  /** As `write`, with the refusal as a result. */
  async writeOrRefuse<T>(work: (db: Kysely<CasebookTables>) => Promise<T>): Promise<T | Refusal> {
    try {
      return await this.write(work);
    } catch (error) {
      if (error instanceof CasebookRefused) return error.refusal;
      throw error;
    }
  }

  #asThrown(error: unknown): unknown {
    if (error instanceof CasebookRefused) return error;
    const refusal = diskRefusal(error, this.path);
    return refusal === null ? error : new CasebookRefused(refusal);
  }
}
