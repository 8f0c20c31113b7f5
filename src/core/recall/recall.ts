import { watchOf } from './watch.ts';

/**
 * `work(source, ...given)`, or what it came to last time when nothing that it read has changed. `source` is the bench or the facts; on plain
 * ones, and so in every single judgement, this is a plain call. `work` must be a function of its arguments alone that changes none of them,
 * and stand at the top of its file: one made anew is never recognised, which costs time and nothing else.
 */
export function recall<S extends object, G extends readonly object[], T>(work: (source: S, ...given: G) => T, source: S, ...given: G): T {
  const watch = watchOf(source);
  return watch === undefined ? work(source, ...given) : watch.memory.recall(work, watch, given);
}

/**
 * `recall` for one of many that are told apart by `id`: subjects of a check, rows of a table. What is given may be made anew each time: plain
 * objects count as the same when their members are the same, or lists of the same.
 */
export function recallOne<S extends object, G extends readonly object[], T>(
  work: (source: S, ...given: G) => T,
  source: S,
  one: { readonly of: object; readonly id: string },
  ...given: G
): T {
  const watch = watchOf(source);
  return watch === undefined ? work(source, ...given) : watch.memory.recall(work, watch, given, one);
}
