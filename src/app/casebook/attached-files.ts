import type { CaseState } from './case-state.ts';

export interface AttachedFile {
  readonly path: string;
  readonly media: string;
  readonly sha256: string;
  readonly bytes: number;
}

/** Every file that the document names, in its order. */
export function attachedFiles(state: CaseState): AttachedFile[] {
  const files = state.case['files'];
  return Array.isArray(files) ? files.filter(isAttached) : [];
}

function isAttached(file: unknown): file is AttachedFile {
  const { path, media, sha256, bytes } = (file ?? {}) as { [member: string]: unknown };
  return typeof path === 'string' && typeof media === 'string' && typeof sha256 === 'string' && typeof bytes === 'number';
}
