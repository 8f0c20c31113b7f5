import { derive } from '../../formula/derive.ts';
import { hotRatio } from '../../formula/load/hot-ratio.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import type { Bench } from '../bench/bench.ts';
import { conditionsOf, findCondition } from '../bench/conditions-of.ts';
import type { LevelFacts, Run } from './sweep-facts.ts';

/** The least held by the runs that fit: of several, the worse counts. */
function leastOf(runs: readonly Run[], fits: (run: Run) => boolean): { run: Run; held: Derived } | null {
  const found = runs.flatMap((run) => (run.held === null || !fits(run) ? [] : [{ run, held: run.held }]));
  return found.toSorted((a, b) => a.held.value - b.held.value)[0] ?? null;
}

/** Hot over cold at the nominal mains, for the place where both were swept; null where one is missing or never left the window. */
export function hotOverCold(bench: Bench, { id, nearest }: LevelFacts): Derived | null {
  const startOf = ({ sweep }: Run): string | null => findCondition(conditionsOf(bench, sweep.exhibit).start);
  for (const sense of ['socket', 'cableEnd'] as const) {
    const at = (start: 'hot' | 'cold'): Derived | null =>
      leastOf(nearest, (run) => run.sweep.exhibit.sense === sense && startOf(run) === start)?.held ?? null;
    const [hot, cold] = [at('hot'), at('cold')];
    if (hot === null || cold === null || hot.side !== undefined || cold.side !== undefined || cold.value <= 0) continue;
    return derive(hotRatio, { hot, cold }, `load/${id}/${sense}/hot-ratio`);
  }
  return null;
}

/**
 * The first thing to rule out when a claim is missed: does the output hold it at the socket and miss it only at the end of the cable? Said only
 * where both places were swept at one mains and the readings tell: the loss then lies between them, whatever the unit itself does.
 */
export function lostInCable({ nearest }: LevelFacts, holds: (held: Derived) => 'yes' | 'no' | 'open'): Note | null {
  const socket = leastOf(nearest, ({ sweep }) => sweep.exhibit.sense === 'socket');
  const end = leastOf(nearest, ({ sweep }) => sweep.exhibit.sense === 'cableEnd');
  if (socket === null || end === null || holds(socket.held) !== 'yes' || holds(end.held) !== 'no') return null;
  return {
    key: 'lostInCable',
    args: { socket: socket.run.sweep.exhibit.id, end: end.run.sweep.exhibit.id, held: socket.held.value, left: end.held.value },
  };
}
