import type { WorkspaceView } from '../../present/workspace/workspace-view.ts';

/** Checks that stay unexamined for good when a measurement is left, by hazard; only shock and fire make up the coverage. */
export function costOf(
  measures: readonly string[],
  { next, rows }: Pick<WorkspaceView, 'next' | 'rows'>,
): { readonly shock: number; readonly fire: number } {
  const findings = new Set(
    next.filter(({ measure }) => measures.includes(measure)).flatMap(({ settles }) => settles.map(({ finding }) => finding)),
  );
  const lost = (hazard: string): number =>
    new Set(rows.filter((row) => row.hazard === hazard && findings.has(row.check)).map(({ check }) => check)).size;
  return { shock: lost('shock'), fire: lost('fire') };
}
