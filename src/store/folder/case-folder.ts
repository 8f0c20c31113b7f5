import { open, realpath, stat } from 'node:fs/promises';
import { basename, dirname, isAbsolute, join, resolve, sep } from 'node:path';
import { type CaseSource, MOST_CASE_BYTES, MOST_FILE_BYTES } from '../../app/case-source.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';

export const CASE_FILE = 'case.json';

/** A case in a folder: `case.json` and its files beside it. `path` is the folder or its case.json. */
export function caseFolder(path: string): CaseSource {
  const folder = basename(path) === CASE_FILE ? dirname(path) : path;
  return {
    readCase: () => readBounded(join(folder, CASE_FILE), MOST_CASE_BYTES, CASE_FILE),
    async readFile(relative) {
      if (isAbsolute(relative) || /^[a-zA-Z]:/.test(relative) || relative.split(/[\\/]/).includes('..'))
        return refuse('outside-the-case', relative, 'a path inside the case folder', { place: '/path' });
      const inside = await within(folder, relative);
      return isRefusal(inside) ? inside : readBounded(inside, MOST_FILE_BYTES, relative);
    },
  };
}

/** The real path of a file, refused when a link leads out of the folder. */
async function within(folder: string, relative: string): Promise<string | Refusal> {
  try {
    const root = await realpath(folder);
    const real = await realpath(resolve(folder, relative));
    return real.startsWith(root + sep) ? real : refuse('outside-the-case', relative, 'a file inside the case folder', { place: '/path' });
  } catch {
    return refuse('file-missing', relative, 'a file that is there', { place: '/path' });
  }
}

async function readBounded(path: string, most: number, shown: string): Promise<Uint8Array | Refusal> {
  try {
    const { size } = await stat(path);
    if (size > most) return refuse('too-large', `${shown} with ${size} bytes`, `at most ${most} bytes`);
    const handle = await open(path, 'r');
    try {
      return new Uint8Array(await handle.readFile());
    } finally {
      await handle.close();
    }
  } catch (error) {
    const code = (error as { code?: string }).code ?? '';
    const expected = code === 'ENOENT' || code === 'ENOTDIR' ? `a folder with a ${CASE_FILE}` : 'a file that can be read';
    return refuse(code === 'ENOENT' || code === 'ENOTDIR' ? 'file-missing' : 'file-unreadable', path, expected);
  }
}
