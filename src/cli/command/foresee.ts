import { readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { createDesk } from '../../app/casebook/create-desk.ts';
import { openCase } from '../../app/open-case.ts';
import { fitSoak } from '../../app/soak/fit-soak.ts';
import { keepFit } from '../../app/soak/keep-fit.ts';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal, refuse } from '../../core/quantity/refusal.ts';
import { foresightText } from '../../present/text/foresight.ts';
import { CASE_FILE, caseFolder } from '../../store/folder/case-folder.ts';
import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';

/** Works out where the temperatures of a soak are going, prints it, and keeps it in the case. */
export async function foresee(path: string, soak: string, options: { within: string; casebook?: string }): Promise<void> {
  const within = parseQuantity(options.within, 'temperatureDifference');
  if (isRefusal(within)) throw new Refused([{ ...within, place: '--within' }]);
  if (!(within.value > 0)) throw new Refused([refuse('not-above-zero', options.within, 'more than 0 K', { place: '--within' })]);
  if (options.casebook !== undefined) return foreseeInCasebook(options.casebook, path, soak, within.value);
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

/** The same for a case of a casebook, as one step that can be undone. */
async function foreseeInCasebook(casebook: string, id: string, soak: string, withinK: number): Promise<void> {
  await withCasebook(casebook, { access: 'write' }, async (store) => {
    const desk = createDesk(store, { now: () => new Date().toISOString(), newId: () => crypto.randomUUID() });
    const open = await desk.open(id);
    if (isRefusal(open)) throw new Refused([open]);
    const ask = { by: 'foresee', base: open.head.revision, step: crypto.randomUUID(), soak, withinK };
    const kept = await desk.foresee(id, ask, () => Promise.resolve(true));
    if (isRefusal(kept)) throw new Refused([kept]);
    await desk.settle();
    const places = (open.state.case['places'] ?? []) as unknown as readonly { readonly id: string; readonly name: string }[];
    print(foresightText(kept.curves, (place) => places.find((one) => one.id === place)?.name ?? place));
    print(`kept in ${id}, at revision ${kept.revision}`);
  });
}
