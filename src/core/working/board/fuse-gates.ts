import { currentOfGate } from '../../formula/board/current-of-gate.ts';
import { derive } from '../../formula/derive.ts';
import { timeGates } from '../../table/iec-60127/undated/time-gates.ts';
import { findCell, lookUp } from '../../table/look-up.ts';
import { gates as americanGates } from '../../table/ul-248-14/undated/gates.ts';
import { interrupting } from '../../table/ul-248-14/undated/interrupting.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Note, StepNode } from '../../trace/step.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { ratingOf } from './part-quantity.ts';

const HOLDS = 1.5; // multiples of the rating at which the sheets state a time
const OPENS = 2.1;
const OPENS_AMERICAN = 2;
const SMALL = /radial|smd|sub-?miniature|surface/i; // such fuses have gates of their own

/**
 * What the fuse that was found bears and when it is sure to open, from its rated current: between the two it may do either, for as long as it
 * likes. Null where nobody read the rating. By the sheets for cartridges, or for subminiature fuses where the package says so; on the American
 * market by the American ones too.
 */
export function fuseGates(bench: Bench, id: string | undefined): { notes: Note[]; steps: StepNode[] } | null {
  const part = id === undefined ? undefined : bench.parts.get(id);
  const rated = part === undefined ? null : ratingOf(part, 'current', 'current', 'I_n').at;
  if (part === undefined || rated === null) return null;
  const small = SMALL.test(findRead(part.package) ?? '');
  const at = (multiple: number): Derived =>
    derive(
      currentOfGate,
      { multiple: given('constant', multiple, '1', { id: `board/gate-${multiple}`, name: 'gateMultiple', symbol: 'k' }), rated },
      `board/${part.id}/gate-${multiple}`,
    );
  const seconds = (multiple: number, column: 'least' | 'most' | 'subminiatureMost'): number | null =>
    findCell(timeGates, multiple, column, `board/time-gate-${multiple}-${column}`, 't')?.value ?? null;
  const [opens, opensWithin] = [at(OPENS), seconds(OPENS, small ? 'subminiatureMost' : 'most')];
  const notes: Note[] = [];
  const steps: StepNode[] = [opens.step];
  const holdsFor = small ? null : seconds(HOLDS, 'least');
  if (holdsFor !== null) {
    const holds = at(HOLDS);
    steps.push(holds.step);
    notes.push({ key: 'fuseHolds', args: { holds: holds.value, time: holdsFor } });
  }
  if (opensWithin !== null) notes.push({ key: 'fuseOpens', args: { opens: opens.value, time: opensWithin } });
  return bench.one.setting.market === 'US' ? withAmerican({ notes, steps }, rated, at(OPENS_AMERICAN)) : { notes, steps };
}

function withAmerican(own: { notes: Note[]; steps: StepNode[] }, rated: Derived, opens: Derived): typeof own {
  const within = findCell(americanGates, OPENS_AMERICAN, 'most', 'board/american-gate', 't');
  const breaks = lookUp(interrupting, rated, 'breaks', 'board/american-interrupting', 'I_b');
  if (within === null || breaks === null) return own;
  return {
    notes: [...own.notes, { key: 'fuseAmerican', args: { opens: opens.value, time: within.value, breaks: breaks.value } }],
    steps: [...own.steps, opens.step, breaks.step],
  };
}
