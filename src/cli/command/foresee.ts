import { readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { openCase } from '../../app/open-case.ts';
import { fitSoak } from '../../app/soak/fit-soak.ts';
import { keepFit } from '../../app/soak/keep-fit.ts';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal, refuse } from '../../core/quantity/refusal.ts';
import { foresightText } from '../../present/text/foresight.ts';
import { CASE_FILE, caseFolder } from '../../store/folder/case-folder.ts';
import { print, Refused } from '../output.ts';

/** Works out where the temperatures of a soak are going, prints it, and keeps it in the case. */
export async function foresee(path: string, soak: string, options: { within: string }): Promise<void> {
  const within = parseQuantity(options.within, 'temperatureDifference');
  if (isRefusal(within)) throw new Refused([{ ...within, place: '--within' }]);
  if (!(within.value > 0)) throw new Refused([refuse('not-above-zero', options.within, 'more than 0 K', { place: '--within' })]);
  const folder = basename(path) === CASE_FILE ? dirname(path) : path;
  const source = caseFolder(folder);
  const open = await openCase(source);
  if (Array.isArray(open)) throw new Refused(open);
  const kept = await fitSoak(open.one, source, soak, within.value);
  if (isRefusal(kept)) throw new Refused([kept]);
  const file = join(folder, CASE_FILE);
  // the result first: a case never names a file that is not there
  await writeFile(join(folder, kept.attachment.path), kept.bytes);
  await writeFile(file, keepFit(await readFile(file, 'utf8'), kept));
  const names = new Map(open.one.places.map(({ id, name }) => [id, name]));
  print(foresightText(kept.curves, (place) => names.get(place) ?? place));
  print(`kept in ${kept.attachment.path}, which the case now names`);
}
