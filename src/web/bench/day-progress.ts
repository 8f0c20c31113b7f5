import type { WorkspaceView } from '../../present/workspace/workspace-view.ts';
import { DAY, type DayStep, type Point, pointsBefore, STEPS, type Tree } from './day-order.ts';

/** `begun`: something is kept and something is still proposed. `left`: nothing is kept and the sample has gone past it. */
export type StepProgress = 'open' | 'begun' | 'done' | 'left';

type Seen = Pick<WorkspaceView, 'next' | 'lastChance' | 'points'>;

/** What the sample went through by each point of no return: one that was taken apart was opened too. */
const PASSED: Readonly<Record<Point, readonly (keyof WorkspaceView['points'])[]>> = {
  opening: ['opened', 'desoldered', 'unwound'],
  desoldering: ['desoldered', 'unwound'],
  unwinding: ['unwound'],
};

export function isPassed(point: Point, { points }: Pick<Seen, 'points'>): boolean {
  return PASSED[point].some((what) => points[what]);
}

/** How far a step is, from what the case holds and what is still proposed. */
export function progressOf(step: DayStep, exhibits: readonly Tree[], seen: Seen): StepProgress {
  const kept = exhibits.some(step.shows) || (step.id === 'open' && seen.points.opened);
  const proposed = seen.next.some(({ measure }) => step.measures.includes(measure));
  if (kept) return proposed ? 'begun' : 'done';
  return isBehindPoint(step, seen) && !proposed ? 'left' : 'open';
}

/** The step that the day goes on with: the first that is not done, and not past. */
export function nextStep(exhibits: readonly Tree[], seen: Seen): string {
  const open = (progress: StepProgress): boolean => progress === 'open' || progress === 'begun';
  const reached = STEPS.filter((step) => !isBehindPoint(step, seen));
  const found = (reached.length === 0 ? STEPS : reached).find((step) => open(progressOf(step, exhibits, seen)));
  return (found ?? STEPS.at(-1) ?? { id: '' }).id;
}

/** The first point of no return before a step that the sample has not gone through. */
export function pointAhead(step: string, seen: Pick<Seen, 'points'>): Point | null {
  return pointsBefore(step).find((point) => !isPassed(point, seen)) ?? null;
}

/** A point of no return was passed that comes after the step. */
function isBehindPoint(step: DayStep, seen: Pick<Seen, 'points'>): boolean {
  const at = DAY.indexOf(step);
  return DAY.slice(at + 1).some((one) => 'point' in one && isPassed(one.point, seen));
}
