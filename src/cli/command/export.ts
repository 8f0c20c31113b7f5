import { exportFolder } from '../../app/casebook/export-folder.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { folderTarget } from '../../store/folder/folder-target.ts';
import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';
import { WITHOUT_PLACE } from '../without-place.ts';

/** Writes the newest state of a case as a case folder. */
export async function exportCase(id: string, options: { casebook: string; out: string }): Promise<void> {
  await withCasebook(options.casebook, { access: 'read' }, async (store) => {
    const head = await exportFolder(store, id, folderTarget(options.out), { withoutPlace: WITHOUT_PLACE });
    if (isRefusal(head)) throw new Refused([head]);
    print(`${id} at revision ${head.revision} is in the folder ${options.out}`);
  });
}
