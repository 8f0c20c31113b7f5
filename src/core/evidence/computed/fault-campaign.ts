import { z } from 'zod';
import { words } from '../typed.ts';
import { outcome, runAssumption, runFinding, runLevel, runMains, runWaveform } from './circuit-run.ts';

/** Every single fault of a traced circuit at one level of a port, at the highest mains. */
export const CAMPAIGN_RECIPE = 'circuit/single-faults/1';
export const CAMPAIGN_FORMAT = 'mainsworthy-single-faults/1';

export const faultKept = z.strictObject({
  id: words,
  ref: words,
  mode: z.enum(['short', 'open', 'worn']),
  /** Pins that are shorted, the pin that is open, or none of a worn part. */
  pins: z.array(words),
});
export type FaultKept = z.infer<typeof faultKept>;

/** `drains`: the converter stands still, and what hangs on the output has not drawn it empty yet. */
export const faultState = z.enum([
  'regulates',
  'limits',
  'hiccups',
  'dead',
  'drains',
  'runaway',
  'ratingExceeded',
  'stillMoving',
  'noResult',
]);
export const loadName = z.enum(['none', 'standby', 'full']);

export const faultOutcome = z.strictObject({
  fault: words,
  load: loadName,
  state: faultState,
  outcome,
  simulatedS: z.number(),
  outputMostV: z.number().nullable(),
  aboveHarmS: z.number(),
  /** Largest of a whole look, also where nothing settled. */
  touchRmsA: z.number().nullable(),
  settled: z.strictObject({ outputV: z.number(), inputW: z.number() }).nullable(),
  /** Parts that lose more than in the healthy circuit at that load, worst first, watt. */
  hotter: z.array(z.strictObject({ part: words, watts: z.number(), healthyW: z.number() })),
  slopeVPerS: z.number().nullable(),
  findings: z.array(runFinding),
  balanced: z.boolean(),
});
export type FaultOutcome = z.infer<typeof faultOutcome>;

/** The file that a computed exhibit of this recipe names. */
export const faultCampaign = z.strictObject({
  format: z.literal(CAMPAIGN_FORMAT),
  recipe: z.literal(CAMPAIGN_RECIPE),
  key: z.string(),
  level: runLevel,
  mains: runMains,
  harmV: z.number(),
  assumptions: z.array(runAssumption),
  leftOut: z.array(words),
  fuses: z.array(words),
  tripKnown: z.boolean(),
  /** Parts beyond their rating in the healthy circuit already; their ratings did not end a run. */
  tolerated: z.array(words),
  healthy: z.array(
    z.strictObject({ load: loadName, outputV: z.number().nullable(), inputW: z.number(), touchRmsA: z.number().nullable() }),
  ),
  faults: z.array(faultKept),
  results: z.array(faultOutcome),
  acrossBarrier: z.array(faultKept),
  certified: z.array(faultKept),
  /** Lines of the worst, by fault and load. */
  worst: z.array(z.strictObject({ fault: words, load: loadName, waveform: runWaveform })),
});
export type FaultCampaign = z.infer<typeof faultCampaign>;
