import type { Derived } from '../../trace/derived.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { worstAnswer } from '../worst-answer.ts';

const REVERSED_BELOW_V = -0.3; // poles the wrong way round, on the unit or on the meter; USB sources stay above it (memory)

/** Does the output stay below what a device on that socket must stand, at every load and mains voltage that was tried? */
export const overvoltage = defineCheck<LevelFacts>({
  id: 'harm/overvoltage',
  consequence: 'damaging',
  needs: ['sweep'],
  subjects: ({ levels }) => {
    const read = levels.filter(({ sweeps }) => sweeps.some(({ rows }) => rows.length > 0));
    return read.length > 0 ? read : 'notLooked';
  },
  judge: ({ setting }, level) => {
    const { whole, bounds } = highestVoltages(level);
    const [highest] = [...whole, ...bounds];
    if (highest === undefined) return { judgement: undecided('notAssessed', 'notLooked') };
    const line = level.window?.harmful ?? null;
    if (line === null) return { judgement: undecided('notAssessed', 'limitUnknown', { measured: highest }) };
    const limit = limitLine('deviceStands', 'atMost', line);
    const worst = worstAnswer([...whole, ...bounds].map((voltage) => ({ judgement: atMost(voltage, limit, setting.decision) })));
    const reversed = level.sweeps.flatMap(({ rows }) => rows).find(({ voltage }) => voltage.value < REVERSED_BELOW_V);
    // poles the wrong way round take a pass away; a voltage beyond the limit stays one
    if (reversed === undefined || worst.judgement.outcome === 'fail') return worst;
    return {
      judgement: undecided('inconclusive', 'contradicted', {
        measured: reversed.voltage,
        limit,
        notes: [{ key: 'reversedPoles', args: {} }],
      }),
    };
  },
});

/** The highest reading, and the highest lower bound of rows that ran off the range: each may decide. */
function highestVoltages(level: LevelFacts): { whole: Derived[]; bounds: Derived[] } {
  const all = level.sweeps.flatMap(({ rows }) => rows.map(({ voltage }) => voltage)).toSorted((a, b) => b.value - a.value);
  return {
    whole: all.filter(({ side }) => side === undefined).slice(0, 1),
    bounds: all.filter(({ side }) => side === 'above' || side === 'anywhere').slice(0, 1),
  };
}
