import { pack as packCase } from '../../app/casebook/pack.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { writeNewFile } from '../../store/folder/archive-file.ts';
import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';
import { WITHOUT_PLACE } from '../without-place.ts';

/** Writes one case of a casebook with its files and its whole history as one archive. */
export async function pack(id: string, options: { casebook: string; out: string }): Promise<void> {
  await withCasebook(options.casebook, { access: 'read' }, async (store) => {
    const archive = await packCase(store, id, { withoutPlace: WITHOUT_PLACE });
    if (isRefusal(archive)) throw new Refused([archive]);
    const written = await writeNewFile(options.out, archive);
    if (isRefusal(written)) throw new Refused([written]);
    print(`${id} packed into ${options.out}, ${written.bytes} bytes`);
  });
}
