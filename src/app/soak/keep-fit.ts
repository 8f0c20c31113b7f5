import { applyEdits, findNodeAtLocation, modify, parseTree } from 'jsonc-parser';
import type { KeptFit } from './fit-soak.ts';

const FORMAT = { formattingOptions: { insertSpaces: true, tabSize: 2 } };

/** The text of a case document that names a kept fit, in place of an older one of the same id; everything else stays as it was typed. */
export function keepFit(text: string, { attachment, computed }: Pick<KeptFit, 'attachment' | 'computed'>): string {
  return put(put(text, 'files', attachment), 'computed', computed);
}

function put(text: string, list: 'files' | 'computed', entry: { readonly id: string }): string {
  const tree = parseTree(text);
  const items = tree === undefined ? undefined : findNodeAtLocation(tree, [list])?.children;
  if (items === undefined) return applyEdits(text, modify(text, [list], [entry], FORMAT));
  const known = items.findIndex((item) => findNodeAtLocation(item, ['id'])?.value === entry.id);
  const at = known === -1 ? items.length : known;
  return applyEdits(text, modify(text, [list, at], entry, { ...FORMAT, isArrayInsertion: known === -1 }));
}
