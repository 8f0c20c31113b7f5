import { readFile } from 'node:fs/promises';
import { isRefusal, refuse } from '../../core/quantity/refusal.ts';
import { describe } from '../../importer/describe.ts';
import { readInstrumentFile } from '../../importer/read-instrument-file.ts';
import { describeText } from '../describe-text.ts';
import { print, Refused } from '../output.ts';

/** Shows how an instrument file is understood, and what it does not say. */
export async function read(path: string, options: { json?: boolean }): Promise<void> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await readFile(path));
  } catch (error) {
    throw new Refused([refuse('file-unreadable', path, `a file that can be read (${(error as { code?: string }).code ?? 'unknown'})`)]);
  }
  const file = readInstrumentFile(bytes);
  if (isRefusal(file)) throw new Refused([{ ...file, place: `${path}${file.place === '' ? '' : ` ${file.place}`}` }]);
  const description = describe(file);
  print(options.json === true ? JSON.stringify(description, null, 2) : describeText(description));
}
