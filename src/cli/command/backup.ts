import { isRefusal } from '../../core/quantity/refusal.ts';
import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';

/** Copies a casebook as it stands at one moment, also while a server writes to it. */
export async function backup(casebook: string, options: { out: string }): Promise<void> {
  await withCasebook(casebook, { access: 'read' }, async (store) => {
    const copy = await store.backup(options.out);
    if (isRefusal(copy)) throw new Refused([copy]);
    print(`${casebook} copied to ${options.out}, ${copy.bytes} bytes`);
  });
}
