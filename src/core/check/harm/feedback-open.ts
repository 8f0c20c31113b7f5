import type { Note } from '../../trace/step.ts';
import { type BrokenFeedback, brokenFeedback } from '../../working/circuit/broken-feedback.ts';
import { endOfRunaway } from '../../working/circuit/end-of-runaway.ts';
import type { Facts } from '../../working/facts.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';

/**
 * What the output does when one part of the feedback breaks: a first estimate by rule, without simulation. A runaway whose end nobody knows
 * stays open; it is never a pass.
 */
export const feedbackOpen = defineCheck<LevelFacts>({
  id: 'harm/feedback-open',
  consequence: 'damaging',
  needs: ['circuit'],
  // the device expects the lowest level of its port when it is plugged in
  subjects: ({ circuit, levels }) => {
    if (circuit === null || levels.length === 0) return 'notLooked';
    if (circuit.recognised.regulation?.feedback === 'none') return 'doesNotApply';
    return levels.filter((level) => levels.find(({ port }) => port === level.port) === level);
  },
  judge: (facts, level) => {
    const circuit = facts.circuit!;
    const broken = brokenFeedback(circuit.recognised);
    if (broken === null)
      return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'feedbackNotRecognised', args: {} }] }) };
    const notes = notesOf(facts, broken);
    const end = endOfRunaway(facts.bench, circuit);
    if (end === null)
      return { judgement: undecided('inconclusive', 'unknownValue', { notes: [...notes, { key: 'tripNotKnown', args: {} }] }) };
    const harmful = level.window?.harmful ?? null;
    const withTrip = [...notes, { key: 'tripHoldsAt', args: { volts: end.value } }];
    if (harmful === null) return { judgement: undecided('notAssessed', 'limitUnknown', { measured: end, notes: withTrip }) };
    return { judgement: { ...atMost(end, limitLine('deviceStands', 'atMost', harmful), facts.setting.decision), notes: withTrip } };
  },
});

function notesOf({ bench, circuit }: Facts, { runaway, floor, lockOut }: BrokenFeedback): Note[] {
  const named = (faults: readonly string[]): string =>
    faults
      .map((fault) => {
        const [id = '', how = ''] = fault.split(' ');
        return `${bench.parts.get(id)?.ref ?? id} ${how}`;
      })
      .join(', ');
  const points = circuit?.setPoints;
  const rest = points !== undefined && !('because' in points) ? points.floor : null;
  return [
    ...(runaway.length > 0 ? [{ key: 'breaksRunAway', args: { faults: named(runaway) } }] : []),
    ...(floor.length > 0
      ? [
          rest === null
            ? { key: 'breaksRest', args: { faults: named(floor) } }
            : { key: 'breaksRestAt', args: { faults: named(floor), volts: rest.value } },
        ]
      : []),
    ...(lockOut.length > 0 ? [{ key: 'breaksLockOut', args: { faults: named(lockOut) } }] : []),
  ];
}
