import type { HeatingCurves } from '../evidence/computed/heating-curves.ts';
import { recall } from '../recall/recall.ts';
import { type BarrierFacts, barrierFacts } from './barrier/barrier-facts.ts';
import type { Bench } from './bench/bench.ts';
import { type BridgingPath, bridgingPaths } from './board/bridging-facts.ts';
import { type CircuitFacts, circuitFacts } from './circuit/circuit-facts.ts';
import { carriedBack } from './heat/carried-back.ts';
import { type HeadingReading, headingReadings } from './heat/heading-facts.ts';
import { carriedToLoad } from './heat/other-load.ts';
import { type PictureFacts, pictureFacts } from './heat/picture-facts.ts';
import { type SpotReading, spotReadings } from './heat/spot-facts.ts';
import { type PairFacts, pairFacts } from './insulation/pair-facts.ts';
import { type LevelFacts, levelFacts } from './load/sweep-facts.ts';
import { type SettingFacts, settingFacts } from './setting/setting-facts.ts';
import { NO_RUNS, type RunFacts } from './simulated/run-facts.ts';
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
  readonly pictures: PictureFacts;
  /** Where logged temperatures are going, by the fits that were kept. */
  readonly headings: readonly HeadingReading[];
  /** Null where no circuit was traced. */
  readonly circuit: CircuitFacts | null;
  readonly stacks: readonly StackFacts[];
  readonly barrier: BarrierFacts;
  readonly transformers: readonly TransformerFacts[];
  /** Kept runs of the traced circuit; put in by the one who can tell whether they still belong to it. */
  readonly runs: RunFacts;
}

/** Each kind of fact is worked out from the bench and the facts it is handed, and remembered where the bench is watched. */
export function gatherFacts(bench: Bench, heating: ReadonlyMap<string, HeatingCurves> = NO_CURVES): Facts {
  const setting = recall(settingFacts, bench);
  const levels = recall(levelFacts, bench, setting);
  const pairs = recall(pairFacts, bench);
  const bridging = recall(bridgingPaths, bench);
  const stacks = recall(stackFacts, bench);
  const pictures = recall(pictureFacts, bench, levels);
  const spots = recall(spotReadings, bench, levels);
  const headings = recall(headingReadings, bench, levels, heating);
  return {
    bench,
    setting,
    pairs,
    bridging,
    touch: recall(touchReadings, bench, setting),
    levels,
    spots: recall(allSpots, bench, levels, spots, pictures, headings),
    pictures,
    headings,
    circuit: recall(circuitFacts, bench),
    stacks,
    barrier: recall(barrierFacts, bench, setting, pairs, bridging, stacks),
    transformers: recall(transformerFacts, bench, setting, levels, stacks),
    runs: NO_RUNS,
  };
}

const NO_CURVES: ReadonlyMap<string, HeatingCurves> = new Map();

/** An end that was worked out is judged as a reading is. */
function allSpots(
  bench: Bench,
  levels: readonly LevelFacts[],
  typed: readonly SpotReading[],
  { readings }: PictureFacts,
  headings: readonly HeadingReading[],
): readonly SpotReading[] {
  const spots = [...typed, ...readings];
  const known = [...spots, ...carriedBack(spots), ...headings.flatMap(({ reading }) => reading ?? [])];
  return [...known, ...carriedToLoad(bench, levels, known)];
}
