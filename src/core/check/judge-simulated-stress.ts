import type { Simulation } from '../evidence/computed/simulation.ts';
import { cite } from '../source/source.ts';
import type { Note } from '../trace/step.ts';
import { ratingOf } from '../working/board/part-quantity.ts';
import type { Facts } from '../working/facts.ts';
import { isUsable, type RunSubject, simulatedValue } from '../working/simulated/run-facts.ts';
import { atMost, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';
import { asSimulated } from './judge-simulated.ts';

/** The largest voltage that one of these parts blocks over all simulated points, against what is printed on it. */
export function judgeSimulatedStress({ bench, setting }: Facts, { id, run }: RunSubject<Simulation>, refs: ReadonlySet<string>): Answer {
  const usable = run.points.filter(isUsable);
  const all = usable.flatMap((point) =>
    point.stresses.filter(({ part, unit }) => unit === 'V' && refs.has(part)).map((stress) => ({ point, stress })),
  );
  const [worst] = all.toSorted(
    (a, b) => b.stress.value / (b.stress.limit ?? b.stress.value) - a.stress.value / (a.stress.limit ?? a.stress.value),
  );
  const lost = run.points.length - usable.length;
  const open: Note[] = lost === 0 ? [] : [{ key: 'pointsWithoutResult', args: { count: lost } }];
  if (worst === undefined) return { judgement: undecided('inconclusive', 'unknownValue', { notes: open }) };
  const measured = simulatedValue(`${id}/${worst.stress.part}`, worst.stress.value, 'V', 'peak');
  const notes: Note[] = [
    { key: 'simulatedPoint', args: { part: worst.stress.part, mains: worst.point.mains.rmsV, load: String(worst.point.load) } },
    { key: 'simulatedAssumed', args: { assumptions: run.assumptions.length } },
  ];
  const part = bench.one.parts.find(({ ref }) => ref === worst.stress.part);
  const rating = part === undefined ? null : ratingOf(part, 'voltage', 'voltage', 'U_r').at;
  if (rating === null)
    return {
      judgement: undecided('inconclusive', 'unknownValue', {
        measured,
        notes: [...notes, { key: 'ratingAssumed', args: { part: worst.stress.part } }, ...open],
      }),
    };
  const source = cite('bench', 'rating as marked on the part or printed in its sheet', 'official-text');
  const judgement = atMost(
    measured,
    { name: 'ratedVoltage', kind: 'atMost', at: rating, source, grade: 'official-text' },
    setting.decision,
  );
  return { judgement: asSimulated({ ...judgement, notes }, { hangsOn: [], open }) };
}
