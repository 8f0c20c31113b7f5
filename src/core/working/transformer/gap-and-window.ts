import { derive } from '../../formula/derive.ts';
import { gapOfInductance } from '../../formula/magnetics/gap-of-inductance.ts';
import { inductanceOfGap } from '../../formula/magnetics/inductance-of-gap.ts';
import { combine } from '../../trace/combine.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { lacking, type NumberList } from './number-list.ts';
import type { StackFacts } from './stack-facts.ts';
import { readStackValue } from './stack-value.ts';

/** Gap from inductance, and the reverse: each checks the other. */
export function tellGap(
  list: NumberList,
  { turns, area, inductance, gap }: { turns: Derived | null; area: Derived | null; inductance: Derived | null; gap: Derived | null },
  id: string,
): void {
  const without = lacking({ primaryTurns: turns, coreArea: area });
  const known = turns !== null && area !== null;
  list.tell('gapOfInductance', known && inductance !== null ? derive(gapOfInductance, { turns, area, inductance }, `${id}/gap`) : null, [
    ...without,
    ...lacking({ inductance }),
  ]);
  list.tell(
    'inductanceOfGap',
    known && gap !== null && gap.value > 0 ? derive(inductanceOfGap, { turns, area, gap }, `${id}/inductance-of-gap`) : null,
    [...without, ...lacking({ gap })],
  );
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
