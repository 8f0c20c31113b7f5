import { derive } from '../../formula/derive.ts';
import { cableResistance } from '../../formula/load/cable-resistance.ts';
import { cite } from '../../source/source.ts';
import { type Derived, uncertainty } from '../../trace/derived.ts';
import type { Note, StepNode } from '../../trace/step.ts';
import { kindOfLimit } from '../../working/load/kind-of-limit.ts';
import { outputResistance } from '../../working/load/output-resistance.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import type { Window } from '../../working/load/window-of.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { worstAnswer } from '../worst-answer.ts';

const LIMITS = ['constantCurrent', 'constantPower', 'foldback', 'hiccup', 'latchOff'];
const SURE = 2; // standard uncertainties by which a slope must differ from none

const LIMIT: LimitLine = {
  name: 'someLimit',
  kind: 'oneOf',
  at: null,
  words: LIMITS,
  source: cite('bench', 'an output has a limit of its own, not only what its parts happen to give', 'common-practice'),
  grade: 'common-practice',
};

/**
 * Which kind of limit has the output beyond its window? Met when the sweep shows one that has a name; an output that gives more and more while
 * its voltage sinks has none. Informative: it sets no word.
 */
export const regulationMode = defineCheck<LevelFacts>({
  id: 'delivery/regulation-mode',
  consequence: 'informative',
  needs: ['sweepBeyond'],
  subjects: ({ levels }) => (levels.length > 0 ? levels : 'notLooked'),
  judge: (_facts, level) => {
    const { window, nearest: alone, inCompany } = level;
    if (alone.length === 0 && inCompany.length > 0)
      return { judgement: undecided('notAssessed', 'notComparable', { notes: [{ key: 'neighboursLoaded', args: {} }] }) };
    if (alone.length === 0) return { judgement: undecided('notAssessed', level.onlyStruck ? 'struck' : 'notLooked') };
    if (window === null) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noWindow', args: {} }] }) };
    const slopes = slopesOf(level, alone);
    const worst = worstAnswer(
      alone.map(({ sweep }): Answer => {
        const found = kindOfLimit(sweep, window);
        const from: Note = { key: 'limitFrom', args: { exhibit: sweep.exhibit.id } };
        const fields = [`/exhibits/${sweep.exhibit.id}/table`];
        if (found === null)
          return {
            judgement: undecided('notAssessed', 'notLooked', { fields, notes: [{ key: 'notSweptBeyond', args: {} }] }),
            notes: [from],
          };
        if (found === 'unknown')
          return {
            judgement: undecided('inconclusive', 'unknownValue', { fields, notes: [{ key: 'shapeUnknown', args: {} }] }),
            notes: [from],
          };
        return {
          judgement: oneOf(found.kind, LIMIT, LIMITS.includes(found.kind), fields),
          notes: [from, { key: `limit-${found.kind}`, args: { ...found.figures } }],
        };
      }),
    );
    return { ...worst, beside: slopes.steps, notes: [...(worst.notes ?? []), ...elsewhere(level, window), ...slopes.notes] };
  },
});

/** What the runs at other mains show: two things can be true, one at each. */
function elsewhere({ sweeps, nearest, inCompany }: LevelFacts, window: Window): Note[] {
  return sweeps
    .filter((sweep) => sweep.mains !== null && ![...nearest, ...inCompany].some((one) => one.sweep === sweep))
    .flatMap((sweep): Note[] => {
      const found = kindOfLimit(sweep, window);
      return found === null || found === 'unknown'
        ? []
        : [{ key: 'limitElsewhere', args: { mains: sweep.mains?.value ?? 'notStated', kind: found.kind } }];
    });
}

/** Output resistance of each run, and what cable and contacts add where there is a run at each end. */
function slopesOf(level: LevelFacts, runs: LevelFacts['nearest']): { steps: StepNode[]; notes: Note[] } {
  const found = runs.flatMap(({ sweep, held }) => {
    const resistance = held === null ? null : outputResistance(sweep, held);
    return resistance === null ? [] : [{ sense: sweep.exhibit.sense, resistance, exhibit: sweep.exhibit.id }];
  });
  const at = (sense: 'socket' | 'cableEnd'): Derived | undefined => found.find((one) => one.sense === sense)?.resistance;
  const [socket, end] = [at('socket'), at('cableEnd')];
  const cable =
    socket === undefined || end === undefined
      ? null
      : derive(cableResistance, { end, socket }, `load/${level.port.id}/${level.level.id}/cable-resistance`);
  const notes = found.map(({ resistance, exhibit }): Note => {
    const u = uncertainty(resistance);
    const rises = resistance.value < 0 && u !== null && -resistance.value > SURE * u;
    return rises
      ? { key: 'cableCompensation', args: { exhibit, rise: -resistance.value } }
      : { key: 'outputResistance', args: { exhibit, resistance: resistance.value } };
  });
  return {
    steps: [...found.map(({ resistance }) => resistance.step), ...(cable === null ? [] : [cable.step])],
    notes: cable === null ? notes : [...notes, { key: 'cableAndContacts', args: { resistance: cable.value } }],
  };
}
