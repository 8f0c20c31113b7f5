import { print, Refused } from '../output.ts';
import { withCasebook } from '../with-casebook.ts';

/** Reads everything that a casebook holds and says what does not match its hash or is missing. */
export async function check(casebook: string): Promise<void> {
  await withCasebook(casebook, { access: 'read' }, async (store) => {
    const { cases, revisions, files, bytes, wrong } = await store.check();
    print(`${cases} cases with ${revisions} revisions, ${files} files with ${bytes} bytes: ${wrong.length} wrong`);
    if (wrong.length > 0) throw new Refused(wrong);
  });
}
