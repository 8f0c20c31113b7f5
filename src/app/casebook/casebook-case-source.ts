import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { canonicalText } from '../../core/result/canonical.ts';
import type { CaseSource } from '../case-source.ts';
import type { CaseState } from './case-state.ts';
import type { FileStore } from './casebook-store.ts';

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
      return named === undefined ? missing(path) : readWhole(files, named);
    },
  };
}

async function readWhole(files: FileStore, { path, sha256 }: Named): Promise<Uint8Array | Refusal> {
  const known = await files.has(sha256);
  if (known === null) return missing(path);
  const whole = new Uint8Array(known.bytes);
  let at = 0;
  for await (const chunk of files.read(sha256)) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

function missing(path: string): Refusal {
  return refuse('file-missing', path, 'a file that is in the casebook', { place: '/path' });
}
