import { derive } from '../../formula/derive.ts';
import { gapBesideCore } from '../../formula/magnetics/gap-beside-core.ts';
import { gapOfInductance } from '../../formula/magnetics/gap-of-inductance.ts';
import { inductanceOfGap } from '../../formula/magnetics/inductance-of-gap.ts';
import { inductanceWithCore } from '../../formula/magnetics/inductance-with-core.ts';
import { combine } from '../../trace/combine.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import type { CoreValues } from './core-values.ts';
import { lacking, type NumberList } from './number-list.ts';
import type { StackFacts } from './stack-facts.ts';
import { readStackValue } from './stack-value.ts';

interface GapInputs {
  readonly turns: Derived | null;
  readonly core: CoreValues;
  readonly inductance: Derived | null;
  readonly gap: Derived | null;
}

/** Gap from inductance, and the reverse: each checks the other. Where the ferrite is not known its reluctance stays out, and the number says so by its name. */
export function tellGap(list: NumberList, { turns, core, inductance, gap }: GapInputs, id: string): void {
  const { area, ungapped } = core;
  const without = lacking({ primaryTurns: turns, coreArea: area });
  if (turns === null || area === null) {
    list.tell('gapOfInductance', null, [...without, ...lacking({ inductance })]);
    list.tell('inductanceOfGap', null, [...without, ...lacking({ gap })]);
    return;
  }
  if (inductance === null) list.tell('gapOfInductance', null, ['inductance']);
  else if (ungapped === null) list.tell('gapWithoutCore', derive(gapOfInductance, { turns, area, inductance }, `${id}/gap`), []);
  else {
    const asked = derive(gapBesideCore, { turns, area, inductance, ungapped }, `${id}/gap`);
    const isThere = asked.value > 0;
    list.tell('gapOfInductance', isThere ? asked : null, isThere ? [] : ['inductanceBelowClosedCore']);
  }
  if (gap === null || gap.value <= 0) list.tell('inductanceOfGap', null, lacking({ gap }));
  else if (ungapped === null)
    list.tell('inductanceWithoutCore', derive(inductanceOfGap, { turns, area, gap }, `${id}/inductance-of-gap`), []);
  else list.tell('inductanceOfGap', derive(inductanceWithCore, { turns, area, gap, ungapped }, `${id}/inductance-of-gap`), []);
}

/** Room for the winding; null where either side was not read. */
export function windowArea(bench: Bench, { exhibit, part }: StackFacts): Derived | null {
  const window = findRead(exhibit.window);
  if (window === null) return null;
  const side = (key: 'width' | 'height'): Derived | null =>
    readStackValue(bench, exhibit, window[key], `/exhibits/${exhibit.id}/window/${key}`, 'length', key[0]!).at;
  const [width, height] = [side('width'), side('height')];
  if (width === null || height === null) return null;
  return combine(
    {
      kind: 'reduce',
      unit: 'm²',
      formula: null,
      symbols: { width: 'w', height: 'h' },
      moves: { width: 'up', height: 'up' },
      compute: (plain) => plain.width * plain.height,
    },
    { width, height },
    { id: `transformer/${part.id}/window`, name: 'windowArea', symbol: 'A_w' },
  );
}
