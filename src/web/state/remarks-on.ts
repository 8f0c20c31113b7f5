import type { WorkspaceView } from '../../present/workspace/workspace-view.ts';

/** Remarks of the judgement on one place of the case, as sentences; "" where there is none. */
export function remarksOn(place: string, warnings: WorkspaceView['warnings']): string {
  const bare = place.replace(/^\/case/, '').replace(/\/v$/, '');
  return warnings
    .filter(({ at }) => at.replace(/\/v$/, '') === bare)
    .map(({ words }) => words)
    .join(' ');
}
