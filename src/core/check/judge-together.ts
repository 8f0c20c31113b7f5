import type { Derived } from '../trace/derived.ts';
import type { Facts } from '../working/facts.ts';
import type { Sweep } from '../working/load/read-sweep.ts';
import { togetherEfficiency } from '../working/load/together-efficiency.ts';
import { atLeast, limitLine, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';
import { columnOf, type EfficiencyColumn } from './efficiency-column.ts';

interface Rules {
  readonly isTestMains: (sweep: Sweep) => boolean;
  readonly leastOf: (nameplate: Derived, column: EfficiencyColumn, at: string) => Derived | null;
}

/** Several outputs loaded together, by the column for more than one voltage, or as one output where all are of one voltage. */
export function judgeTogether({ bench, levels, setting }: Facts, { isTestMains, leastOf }: Rules): Answer {
  const found = togetherEfficiency(bench, levels, isTestMains);
  if ('missing' in found) return missing(found);
  const column = found.voltages === 'several' ? 'multiple' : columnOf(found.nominal.value, found.amperes);
  const least = leastOf(found.nameplate, column, 'load/together');
  if (least === null) return { judgement: undecided('notAssessed', 'limitUnknown', { measured: found.average }), show: 'percent' };
  const notes: NonNullable<Answer['notes']> = [
    { key: found.voltages === 'several' ? 'togetherSeveralVoltages' : 'togetherOneVoltage', args: { exhibits: found.exhibits.join(', ') } },
    ...(found.derated.value < 1 ? [{ key: 'togetherDerated', args: { share: found.derated.value } }] : []),
    // the American figure for several voltages was read nowhere
    ...(bench.one.setting.market === 'US' ? [{ key: 'togetherAmericanUnknown', args: {} }] : []),
  ];
  const common = { show: 'percent', notes, beside: [found.derated.step] } as const;
  if (found.average.value > 1) return { ...common, judgement: undecided('inconclusive', 'contradicted', { measured: found.average }) };
  return { ...common, judgement: atLeast(found.average, limitLine('ecodesign', 'atLeast', least), setting.decision) };
}

function missing(why: Extract<ReturnType<typeof togetherEfficiency>, { missing: string }>): Answer {
  const note = (key: string, args: Record<string, string> = {}) => ({ notes: [{ key, args }] });
  switch (why.missing) {
    case 'runs':
      return { judgement: undecided('notAssessed', 'notLooked', note('togetherNotRead')) };
    case 'printed':
      return { judgement: undecided('notAssessed', 'limitUnknown', note('noClaim')) };
    case 'voltages':
      return { judgement: undecided('notAssessed', 'notLooked', note('neighboursNotWatched')) };
    case 'point':
      return { judgement: undecided('notAssessed', 'outOfRange', note('loadPointMissing', { point: why.point })) };
  }
}
