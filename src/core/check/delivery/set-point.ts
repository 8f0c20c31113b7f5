import type { Note } from '../../trace/step.ts';
import { type LeastLoad, leastLoad } from '../../working/circuit/least-load.ts';
import { greatestResistor, leastResistor } from '../../working/circuit/led-window.ts';
import type { SetPoint, SetPoints } from '../../working/circuit/set-points.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { limitLine, undecided, within } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { setPointFor } from '../judge-set-points.ts';

/** Do the feedback parts of this sample set the output to what is claimed? Worked out for no load, at the board. */
export const setPoint = defineCheck<LevelFacts>({
  id: 'delivery/set-point',
  consequence: 'disappointing',
  needs: ['circuit'],
  subjects: ({ circuit, levels }) => (circuit === null || levels.length === 0 ? 'notLooked' : levels),
  judge: (facts, level) => {
    const found = setPointFor(facts, level);
    if ('judgement' in found) return { judgement: found.judgement };
    const { all, point } = found;
    const { recognised } = facts.circuit!;
    const greatest = greatestResistor(facts.bench, recognised, all, point);
    const least = leastResistor(facts.bench, recognised, point);
    const idle = leastLoad(facts.bench, recognised, point);
    const worked = [point.led, all.bypass, greatest, least, idle?.current ?? null, idle?.power ?? null];
    const beside = worked.flatMap((derived) => (derived === null ? [] : [derived.step]));
    const notes = [
      { key: 'setWithoutLoad', args: {} },
      ...notesOf(all, point),
      ...(greatest === null ? [] : [{ key: 'ledResistorAtMost', args: { ohms: greatest.value } }]),
      ...(least === null ? [] : [{ key: 'ledResistorAtLeast', args: { ohms: least.value } }]),
      ...(idle === null ? [] : [idleNote(idle)]),
    ];
    if (level.window === null) return { judgement: undecided('notAssessed', 'limitUnknown', { measured: point.value, notes }), beside };
    const limit = limitLine('window', 'within', level.window.least, level.window.most);
    return { judgement: { ...within(point.value, limit, facts.setting.decision), notes }, beside };
  },
});

function idleNote({ parts, current, power }: LeastLoad): Note {
  const names = parts.map((part) => part.toUpperCase()).join(', ');
  return { key: 'bleederLoads', args: { parts: names, amperes: current.value, watts: power.value } };
}

function notesOf(all: SetPoints, { legs, led, divider }: SetPoint): Note[] {
  const notes: Note[] = [];
  if (legs.length > 0) notes.push({ key: 'setWithLegs', args: { legs: legs.map((leg) => leg.toUpperCase()).join(', ') } });
  if (led !== null) notes.push({ key: led.value > 0 ? 'ledCurrentAtMost' : 'ledWithoutCurrent', args: { amperes: led.value } });
  const bias = divider?.reference.bias ?? null;
  if (bias !== null && all.bypass !== null)
    notes.push({
      key: all.bypass.value >= bias.value ? 'bypassFeedsReference' : 'bypassBelowReference',
      args: { amperes: all.bypass.value, least: bias.value },
    });
  return notes;
}
