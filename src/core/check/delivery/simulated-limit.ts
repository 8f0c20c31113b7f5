import type { Simulation } from '../../evidence/computed/simulation.ts';
import type { Note } from '../../trace/step.ts';
import { isUsable, type RunSubject, simulatedValue, subjectsOf } from '../../working/simulated/run-facts.ts';
import { atLeast, limitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { asSimulated } from '../judge-simulated.ts';

/** Up to which current does the simulated output stay inside its window, at nominal mains? Between two points on a straight line. */
export const simulatedLimit = defineCheck<RunSubject<Simulation>>({
  id: 'delivery/simulated-limit',
  consequence: 'disappointing',
  needs: ['circuitRun'],
  subjects: ({ runs }) => (runs.simulations.length === 0 ? 'notLooked' : subjectsOf(runs.simulations)),
  judge: ({ levels, setting }, { id, run }) => {
    const level = levels.find((one) => one.port.id === run.level.port && one.level.id === run.level.id);
    const window = level?.window ?? null;
    const notes: Note[] = [{ key: 'simulatedAssumed', args: { assumptions: run.assumptions.length } }];
    const [nominal] = run.points;
    const points = run.points
      .filter(
        (point) =>
          isUsable(point) && point.settled && point.mains.rmsV === nominal?.mains.rmsV && point.output !== null && point.outputA !== null,
      )
      .map(({ output, outputA }) => ({ amps: outputA!, volts: output!.mean }))
      .toSorted((a, b) => a.amps - b.amps);
    if (window === null || level?.claim == null) return { judgement: undecided('notAssessed', 'limitUnknown', { notes }) };
    const held = heldUpTo(points, window.least.value);
    if (held === null)
      return {
        judgement: undecided('inconclusive', 'unknownValue', {
          notes: [...notes, { key: 'pointsWithoutResult', args: { count: run.points.length - points.length } }],
        }),
      };
    const current = simulatedValue(`${id}/limit`, held.amps, 'A', 'current', held.atLeast ? 'above' : undefined);
    const judgement = atLeast(current, limitLine('claim', 'atLeast', level.claim), setting.decision);
    return { judgement: asSimulated({ ...judgement, notes }, { hangsOn: [], open: [] }) };
  },
});

/** Where the line through the points crosses the lower edge; the last point where it never does. Null without points. */
function heldUpTo(
  points: readonly { readonly amps: number; readonly volts: number }[],
  leastV: number,
): { amps: number; atLeast: boolean } | null {
  const first = points.findIndex(({ volts }) => volts < leastV);
  const last = points.at(-1);
  if (last === undefined) return null;
  if (first === -1) return { amps: last.amps, atLeast: true };
  const [before, after] = [points[first - 1], points[first]!];
  if (before === undefined) return { amps: 0, atLeast: false };
  return { amps: before.amps + ((before.volts - leastV) / (before.volts - after.volts)) * (after.amps - before.amps), atLeast: false };
}
