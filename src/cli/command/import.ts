import { importFolder } from '../../app/casebook/import-folder.ts';
import { caseFolder } from '../../store/folder/case-folder.ts';
import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';

/** Takes a case folder into a casebook, which is made where there is none. */
export async function importCase(folder: string, options: { casebook: string }): Promise<void> {
  await withCasebook(options.casebook, { access: 'write', make: true }, async (store) => {
    const head = await importFolder(store, caseFolder(folder), { at: new Date().toISOString(), by: 'command', step: 'import' });
    if (Array.isArray(head)) throw new Refused(head);
    print(`${head.id} is in ${options.casebook}`);
  });
}
