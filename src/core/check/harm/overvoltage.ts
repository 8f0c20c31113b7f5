import type { Derived } from '../../trace/derived.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';

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
    const highest = highestVoltage(level);
    if (highest === null) return { judgement: undecided('notAssessed', 'notLooked') };
    const line = level.window?.harmful ?? null;
    if (line === null) return { judgement: undecided('notAssessed', 'limitUnknown', { measured: highest }) };
    return { judgement: atMost(highest, limitLine('deviceStands', 'atMost', line), setting.decision) };
  },
});

function highestVoltage(level: LevelFacts): Derived | null {
  const all = level.sweeps.flatMap(({ rows }) => rows.map(({ voltage }) => voltage)).filter(({ side }) => side !== 'below');
  return all.sort((a, b) => b.value - a.value)[0] ?? null;
}
