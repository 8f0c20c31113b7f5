import { weakestGrade } from '../source/grade.ts';
import type { Derived } from '../trace/derived.ts';
import type { Window } from '../working/load/window-of.ts';
import { type LimitLine, limitLine } from './decide.ts';

/** What must be held inside a window. The claim stands on a label or was read, the window on its table: the line takes the weaker of the two. */
export function heldLine(name: string, claim: Derived, window: Window): LimitLine {
  const own = limitLine(name, 'atLeast', claim);
  const edges = limitLine('window', 'within', window.least, window.most);
  const grade = weakestGrade([own.grade, edges.grade]);
  return { ...own, grade, source: grade === own.grade ? own.source : edges.source };
}
