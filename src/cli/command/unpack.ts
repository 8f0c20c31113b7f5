import { admitPack, readPack } from '../../app/casebook/unpack.ts';
import { isRefusal, type Refusal } from '../../core/quantity/refusal.ts';
import { archiveFile } from '../../store/folder/archive-file.ts';
import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';

/** Takes a packed case into a casebook, which is made where there is none; whole or not at all. */
export async function unpack(file: string, options: { casebook: string }): Promise<void> {
  const archive = await archiveFile(file);
  if (isRefusal(archive)) throw new Refused([archive]);
  const packed = await readPack(archive);
  if (isRefusal(packed)) throw new Refused([inFile(packed, file)]);
  await withCasebook(options.casebook, { access: 'write', make: true }, async (store) => {
    const head = await admitPack(store, packed, new Date().toISOString());
    if (isRefusal(head)) throw new Refused([inFile(head, file)]);
    print(`${head.id} is in ${options.casebook} with ${head.revision} revisions`);
  });
}

function inFile(refusal: Refusal, file: string): Refusal {
  return { ...refusal, place: refusal.place === '' ? file : `${file} ${refusal.place}` };
}
