import { mkdir, writeFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { newCase, slugOf } from '../../app/new-case.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { CASE_FILE } from '../../store/folder/case-folder.ts';
import { print, Refused } from '../output.ts';

/** Makes a folder with an empty case. An existing case is never overwritten. */
export async function newFolder(path: string): Promise<void> {
  const file = join(path, CASE_FILE);
  try {
    await mkdir(path, { recursive: true });
    await writeFile(file, `${JSON.stringify(newCase(slugOf(basename(resolve(path)))), null, 2)}\n`, { flag: 'wx' });
  } catch (error) {
    const { code = 'unknown' } = error as { code?: string };
    throw new Refused([
      refuse(
        code === 'EEXIST' ? 'case-exists' : 'cannot-write',
        file,
        code === 'EEXIST' ? 'a folder without a case' : `a place that can be written to (${code})`,
      ),
    ]);
  }
  print(`new case in ${file}; what can go into it is in docs/case-format.md and schema/case.schema.json`);
}
