import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { heldCurrent } from './held-current.ts';
import { companyOf } from './other-loads.ts';
import type { Sweep } from './read-sweep.ts';
import type { LevelFacts } from './sweep-facts.ts';

/** One end of the mains range with the sweeps taken there, this port loaded alone. */
export interface RangeEnd {
  readonly which: 'low' | 'high';
  readonly mains: Derived;
  readonly runs: readonly { readonly sweep: Sweep; readonly held: Derived }[];
}

const NEAR_THE_END = 0.05; // share of the end within which a run counts as taken there; common practice

export function rangeEnds(bench: Bench, setting: SettingFacts, level: LevelFacts): RangeEnd[] {
  return (['low', 'high'] as const).map((which) => {
    const mains = setting[which];
    const runs = level.sweeps.flatMap((sweep) => {
      const near = sweep.mains !== null && Math.abs(sweep.mains.value - mains.value) <= NEAR_THE_END * mains.value;
      const held =
        near && level.window !== null && companyOf(bench, sweep.exhibit, sweep.port) === '' ? heldCurrent(sweep, level.window) : null;
      return held === null ? [] : [{ sweep, held }];
    });
    return { which, mains, runs };
  });
}
