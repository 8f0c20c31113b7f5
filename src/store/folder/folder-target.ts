import { createWriteStream } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { FolderTarget } from '../../app/casebook/export-folder.ts';
import { refuse } from '../../core/quantity/refusal.ts';

/** A folder on the disk to write into; a file that is there already is refused, never written over. */
export function folderTarget(folder: string): FolderTarget {
  return {
    async write(path, content) {
      const whole = join(folder, path);
      try {
        await mkdir(dirname(whole), { recursive: true });
        await pipeline(Readable.from(content), createWriteStream(whole, { flags: 'wx', flush: true }));
        return null;
      } catch (error) {
        const { code = '' } = error as { code?: string };
        if (code === 'EEXIST') return refuse('file-exists', whole, 'a folder without this file');
        if (code === '' || !code.startsWith('E')) throw error;
        return refuse('cannot-write', whole, `a place that can be written to (${code})`);
      }
    },
  };
}
