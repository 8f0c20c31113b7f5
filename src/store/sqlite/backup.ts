import { existsSync } from 'node:fs';
import { open, rename, rm, stat } from 'node:fs/promises';
import Database from 'better-sqlite3';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import type { Connection } from './connection.ts';
import { diskRefusal } from './disk-refusal.ts';

const PAGES_AT_A_TIME = 256; // 1 MiB of 4 KiB pages between two looks at everything else the server does

/**
 * Copies the casebook as it stands at one moment into a new file, while it goes on being written. A reader of its own holds that moment:
 * without it every write of the others would start the copy over. The copy gets its name when it is whole and on disk.
 */
export async function backupInto(
  connection: Connection,
  to: string,
  progress?: (share: number) => void,
  signal?: AbortSignal,
): Promise<{ bytes: number } | Refusal> {
  if (existsSync(to)) return refuse('file-exists', to, 'a name that no file has yet');
  const part = `${to}.part`;
  const own = !connection.sqlite.memory;
  try {
    const from = own ? new Database(connection.path, { readonly: true }) : connection.sqlite;
    try {
      if (own) from.exec('BEGIN; SELECT 1 FROM cases LIMIT 1;');
      await from.backup(part, {
        progress: ({ totalPages, remainingPages }) => {
          signal?.throwIfAborted();
          if (totalPages > 0) progress?.(1 - remainingPages / totalPages);
          return PAGES_AT_A_TIME;
        },
      });
    } finally {
      if (own) from.close();
    }
    await onDisk(part);
    await rename(part, to);
    return { bytes: (await stat(to)).size };
  } catch (error) {
    await rm(part, { force: true });
    const refusal = backupRefusal(error, to);
    if (refusal === null) throw error;
    return refusal;
  }
}

async function onDisk(path: string): Promise<void> {
  const handle = await open(path, 'r+');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

function backupRefusal(error: unknown, to: string): Refusal | null {
  if (isRefusal(error)) return error;
  const { name, message, code } = error as { name?: string; message?: string; code?: string };
  if (name === 'AbortError') return refuse('stopped', to, 'a copy that is let run to its end');
  if (code === 'ENOSPC') return refuse('disk-full', to, 'room on the disk for the copy');
  if (message?.includes('directory does not exist') === true) return refuse('cannot-write', to, 'a folder that is there');
  if (code === 'SQLITE_CANTOPEN' || code === 'EACCES' || code === 'EROFS')
    return refuse('cannot-write', to, 'a place that can be written to');
  return diskRefusal(error, to);
}
