import Database from 'better-sqlite3';
import { type Refusal, refuse } from '../../core/quantity/refusal.ts';

/**
 * Held by the one process that may write a casebook: an exclusive lock of SQLite on an empty file beside it. The operating system drops
 * it with the process, however that ends, so a killed server leaves nothing locked. The empty file stays: taking it away while another
 * process is opening it would let two in.
 */
export interface WriteLock {
  release(): void;
}

export function takeWriteLock(path: string): WriteLock | Refusal {
  const lock = new Database(`${path}.lock`, { timeout: 0 });
  try {
    lock.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    lock.close();
    if ((error as { code?: string }).code !== 'SQLITE_BUSY') throw error;
    return refuse('casebook-in-use', path, 'a casebook that nothing else has open for writing');
  }
  return { release: () => void lock.close() };
}
