import type { CaseState } from './case-state.ts';

/** SHA-256 of every file that the document names, in its order. */
export function attachedHashes(state: CaseState): string[] {
  const files = state.case['files'];
  return Array.isArray(files) ? files.map((file) => hashIn(file)).filter((hash) => hash !== null) : [];
}

function hashIn(file: unknown): string | null {
  const hash = (file as { sha256?: unknown } | null)?.sha256;
  return typeof hash === 'string' ? hash : null;
}
