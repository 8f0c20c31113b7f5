import type { SetPoint, SetPoints } from '../working/circuit/set-points.ts';
import type { Facts } from '../working/facts.ts';
import type { LevelFacts } from '../working/load/sweep-facts.ts';
import { type Judgement, undecided } from './decide.ts';
import { judgeState } from './judge-state.ts';

/** The set point that belongs to a level of a port, or why there is none. */
export function setPointFor(
  facts: Facts,
  level: LevelFacts,
): { readonly all: SetPoints; readonly point: SetPoint } | { readonly judgement: Judgement } {
  const found = facts.circuit?.setPoints;
  if (found === undefined) return { judgement: undecided('notAssessed', 'notLooked') };
  if ('because' in found) {
    if (found.because === 'value') return { judgement: judgeState(found.opened, found.field) };
    return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: found.because, args: {} }] }) };
  }
  const nominal = level.window?.nominal.value ?? null;
  const base = found.points[0]!;
  const stated = found.points.find((point) => point.level === level.level.id);
  if (stated !== undefined) return { all: found, point: stated };
  if (nominal === null) return { all: found, point: base };
  const lowest = Math.min(
    ...level.port.levels.map(
      ({ id }) =>
        facts.levels.find((one) => one.port === level.port && one.level.id === id)?.window?.nominal.value ?? Number.POSITIVE_INFINITY,
    ),
  );
  const [nearest] = found.points
    .filter((point) => point.level === undefined)
    .toSorted((a, b) => Math.abs(a.value.value - nominal) - Math.abs(b.value.value - nominal));
  // without legs a chip moves the output by a current of its own: the parts say only what the lowest level is
  if (found.chip && !found.points.some(({ legs }) => legs.length > 0) && nominal > lowest)
    return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'chipShiftsOutput', args: {} }] }) };
  return { all: found, point: found.chip ? (nearest ?? base) : base };
}
