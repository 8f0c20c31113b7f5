import type { Case } from '../evidence/case.ts';
import type { HeatingCurves } from '../evidence/computed/heating-curves.ts';
import { type BarrierFacts, barrierFacts } from './barrier/barrier-facts.ts';
import { type Bench, openBench, type Tables } from './bench/bench.ts';
import { type BridgingPath, bridgingPaths } from './board/bridging-facts.ts';
import { type CircuitFacts, circuitFacts } from './circuit/circuit-facts.ts';
import { carriedBack } from './heat/carried-back.ts';
import { type HeadingReading, headingReadings } from './heat/heading-facts.ts';
import { type SpotReading, spotReadings } from './heat/spot-facts.ts';
import { type PairFacts, pairFacts } from './insulation/pair-facts.ts';
import { type LevelFacts, levelFacts } from './load/sweep-facts.ts';
import { type SettingFacts, settingFacts } from './setting/setting-facts.ts';
import { type TouchReading, touchReadings } from './touch/touch-facts.ts';
import { type StackFacts, stackFacts } from './transformer/stack-facts.ts';
import { type TransformerFacts, transformerFacts } from './transformer/transformer-facts.ts';

/** Everything that checks may ask, worked out once from the evidence. */
export interface Facts {
  readonly bench: Bench;
  readonly setting: SettingFacts;
  readonly pairs: readonly PairFacts[];
  readonly bridging: readonly BridgingPath[];
  readonly touch: readonly TouchReading[];
  readonly levels: readonly LevelFacts[];
  readonly spots: readonly SpotReading[];
  /** Where logged temperatures are going, by the fits that were kept. */
  readonly headings: readonly HeadingReading[];
  /** Null where no circuit was traced. */
  readonly circuit: CircuitFacts | null;
  readonly stacks: readonly StackFacts[];
  readonly barrier: BarrierFacts;
  readonly transformers: readonly TransformerFacts[];
}

export function gatherFacts(one: Case, tables: Tables, heating: ReadonlyMap<string, HeatingCurves> = new Map()): Facts {
  const bench = openBench(one, tables);
  const setting = settingFacts(bench);
  const levels = levelFacts(bench, setting);
  const pairs = pairFacts(bench);
  const bridging = bridgingPaths(bench);
  const stacks = stackFacts(bench);
  const spots = spotReadings(bench, levels);
  const headings = headingReadings(bench, levels, heating);
  return {
    bench,
    setting,
    pairs,
    bridging,
    touch: touchReadings(bench, setting),
    levels,
    // an end that was worked out is judged as a reading is
    spots: [...spots, ...carriedBack(spots), ...headings.flatMap(({ reading }) => reading ?? [])],
    headings,
    circuit: circuitFacts(bench),
    stacks,
    barrier: barrierFacts(bench, setting, pairs, bridging, stacks),
    transformers: transformerFacts(bench, setting, levels, stacks),
  };
}
