import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { canonicalText } from '../../core/result/canonical.ts';
import type { CaseSource } from '../case-source.ts';
import type { CaseState } from './case-state.ts';
import type { FileStore } from './casebook-store.ts';
import { readWhole } from './read-whole.ts';

interface Named {
  readonly path: string;
  readonly sha256: string;
}

/** A case of a casebook, read the way a folder is: the document as it stands, its files by the hashes it names. */
export function casebookCaseSource(state: CaseState, files: FileStore): CaseSource {
  return {
    readCase: async () => new TextEncoder().encode(canonicalText(state.case)),
    readFile: async (path) => {
      const listed = state.case['files'];
      const named = Array.isArray(listed) ? (listed as unknown as Named[]).find((file) => file.path === path) : undefined;
      if (named === undefined || (await files.has(named.sha256)) === null) return missing(path);
      return readWhole(files, named.sha256);
    },
  };
}

function missing(path: string): Refusal {
  return refuse('file-missing', path, 'a file that is in the casebook', { place: '/path' });
}
