import { existsSync, realpathSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import Database, { type Database as Sqlite } from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import type { CasebookStore } from '../../app/casebook/casebook-store.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { backupInto } from './backup.ts';
import { sqliteCases } from './cases.ts';
import { checkCasebook } from './check.ts';
import { Connection } from './connection.ts';
import { diskRefusal } from './disk-refusal.ts';
import { sqliteFiles } from './files.ts';
import { APPLICATION_ID, migrate, versionOf } from './migrate.ts';
import { NEWEST_VERSION } from './migration/migrations.ts';
import type { CasebookTables } from './tables.ts';
import { takeWriteLock, type WriteLock } from './write-lock.ts';

export const IN_MEMORY = ':memory:';
const BUSY_TIMEOUT_MS = 5000; // another process may hold the file for the moment of a checkpoint; house choice
const CACHE_KIB = 32 * 1024; // holds what a search among 10,000 cases goes through; filled as it is used
const ANY_WRITE_BIT = 0o222;

export interface OpenOptions {
  /** 'write': alone, brought up to the newest version. 'read': beside a writer, nothing is changed. */
  readonly access: 'read' | 'write';
  /** Makes a new casebook where there is none. */
  readonly make?: boolean;
  /** A ceiling in pages of 4 KiB, beyond which the disk counts as full. */
  readonly mostPages?: number;
}

/** Opens a casebook file; `:memory:` is one that nobody keeps. Whatever stands in the way comes back as one refusal. */
export async function openCasebook(path: string, { access, make = false, mostPages }: OpenOptions): Promise<CasebookStore | Refusal> {
  const kept = path !== IN_MEMORY;
  const found = kept && existsSync(path);
  if (kept && !found && !make) return refuse('casebook-missing', path, 'a casebook that is there');
  if (kept && !existsSync(dirname(path))) return refuse('casebook-unreadable', path, 'a place in a folder that is there');
  let sqlite: Sqlite | null = null;
  let lock: WriteLock | null = null;
  try {
    if (found && access === 'write' && (statSync(path).mode & ANY_WRITE_BIT) === 0)
      return refuse('casebook-read-only', path, 'a casebook that can be written to');
    if (kept && access === 'write') {
      const taken = takeWriteLock(found ? realpathSync(path) : path);
      if (isRefusal(taken)) return taken;
      lock = taken;
    }
    sqlite = new Database(path, { timeout: BUSY_TIMEOUT_MS, readonly: access === 'read' });
    const refusal = whatItIs(sqlite, path, access);
    if (refusal !== null) {
      sqlite.close();
      lock?.release();
      return refusal;
    }
    if (mostPages !== undefined) sqlite.pragma(`max_page_count = ${mostPages}`);
    return await settle(path, sqlite, access, lock);
  } catch (error) {
    sqlite?.close();
    lock?.release();
    const refusal = diskRefusal(error, path);
    if (refusal === null) throw error;
    return refusal;
  }
}

/** Looks before anything is written: another program's file and a newer casebook stay untouched. */
function whatItIs(sqlite: Sqlite, path: string, access: OpenOptions['access']): Refusal | null {
  // also what is left when the very first opening was killed: a page without a table
  const empty = sqlite.prepare('SELECT 1 FROM sqlite_schema').get() === undefined;
  const mark = sqlite.pragma('application_id', { simple: true });
  if (mark !== APPLICATION_ID && !(empty && mark === 0)) return refuse('not-a-casebook', path, 'a casebook of this tool');
  const version = versionOf(sqlite);
  if (version > NEWEST_VERSION)
    return refuse('casebook-newer', `${path} of version ${version}`, `version ${NEWEST_VERSION} or older; a newer tool made this one`);
  if (access === 'read' && version < NEWEST_VERSION)
    return empty
      ? refuse('not-a-casebook', path, 'a casebook of this tool')
      : refuse(
          'casebook-older',
          `${path} of version ${version}`,
          `version ${NEWEST_VERSION}: open it once for writing, which brings it up`,
        );
  return null;
}

async function settle(path: string, sqlite: Sqlite, access: OpenOptions['access'], lock: WriteLock | null): Promise<CasebookStore> {
  if (access === 'write') {
    sqlite.pragma('journal_mode = WAL');
    sqlite.pragma('synchronous = FULL'); // an acknowledged edit outlives a power cut
    migrate(sqlite);
  }
  sqlite.pragma('foreign_keys = ON');
  sqlite.pragma(`cache_size = -${CACHE_KIB}`);
  const db = new Kysely<CasebookTables>({ dialect: new SqliteDialect({ database: sqlite }) });
  const connection = new Connection(path, sqlite, db);
  const files = sqliteFiles(connection);
  // nobody else can be writing, so every upload without an end is a leftover
  if (access === 'write') await files.sweep(AFTER_ALL_TIMES);
  return {
    cases: sqliteCases(connection),
    files,
    backup: (to, progress, signal) => backupInto(connection, to, progress, signal),
    check: (progress, signal) => checkCasebook(connection, progress, signal),
    async close() {
      await db.destroy(); // closes the database, the last one moves the log into the file
      lock?.release();
    },
  };
}

const AFTER_ALL_TIMES = '\uffff'; // above any ISO 8601 text
