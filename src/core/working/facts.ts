import type { Case } from '../evidence/case.ts';
import { type BarrierFacts, barrierFacts } from './barrier/barrier-facts.ts';
import { type Bench, openBench, type Tables } from './bench/bench.ts';
import { type BridgingPath, bridgingPaths } from './board/bridging-facts.ts';
import { type CircuitFacts, circuitFacts } from './circuit/circuit-facts.ts';
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
  /** Null where no circuit was traced. */
  readonly circuit: CircuitFacts | null;
  readonly stacks: readonly StackFacts[];
  readonly barrier: BarrierFacts;
  readonly transformers: readonly TransformerFacts[];
}

export function gatherFacts(one: Case, tables: Tables): Facts {
  const bench = openBench(one, tables);
  const setting = settingFacts(bench);
  const levels = levelFacts(bench, setting);
  const pairs = pairFacts(bench);
  const bridging = bridgingPaths(bench);
  const stacks = stackFacts(bench);
  return {
    bench,
    setting,
    pairs,
    bridging,
    touch: touchReadings(bench, setting),
    levels,
    spots: spotReadings(bench, levels),
    circuit: circuitFacts(bench),
    stacks,
    barrier: barrierFacts(bench, setting, pairs, bridging, stacks),
    transformers: transformerFacts(bench, setting, levels, stacks),
  };
}
