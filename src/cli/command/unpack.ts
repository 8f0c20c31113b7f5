import { unpack as unpackCase } from '../../app/casebook/unpack.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { archiveFile } from '../../store/folder/archive-file.ts';
import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';

/** Takes a packed case into a casebook, which is made where there is none; whole or not at all. */
export async function unpack(file: string, options: { casebook: string }): Promise<void> {
  const archive = await archiveFile(file);
  if (isRefusal(archive)) throw new Refused([archive]);
  await withCasebook(options.casebook, { access: 'write', make: true }, async (store) => {
    const head = await unpackCase(store, archive, new Date().toISOString());
    if (isRefusal(head)) throw new Refused([{ ...head, place: head.place === '' ? file : `${file} ${head.place}` }]);
    print(`${head.id} is in ${options.casebook} with ${head.revision} revisions`);
  });
}
