import { z } from 'zod';
import { words } from '../typed.ts';
import { outcome, runAssumption, runFinding, runLevel, runMains, runWaveform } from './circuit-run.ts';

/** Operating points of a traced circuit at one level of a port. */
export const SIMULATION_RECIPE = 'circuit/operating-points/1';
export const SIMULATION_FORMAT = 'mainsworthy-operating-points/1';

/** Largest voltage or current of a part against what it stands; null where nothing is known to hold it against. */
export const stress = z.strictObject({ part: words, unit: z.enum(['V', 'A']), value: z.number(), limit: z.number().nullable() });

export const operatingPoint = z.strictObject({
  id: words,
  mains: runMains,
  /** Nothing, 50 mA, or a share of the promised current drawn by a resistor. */
  load: z.union([z.enum(['none', 'standby']), z.number()]),
  outcome,
  /** Whether it came to rest; without it the means are of something that still moves. */
  settled: z.boolean(),
  simulatedS: z.number(),
  output: z.strictObject({ mean: z.number(), least: z.number(), most: z.number() }).nullable(),
  outputA: z.number().nullable(),
  inputW: z.number(),
  mainsRmsA: z.number().nullable(),
  touchRmsA: z.number().nullable(),
  stresses: z.array(stress),
  /** The parts that lose most, watt. */
  losses: z.array(z.strictObject({ part: words, watts: z.number() })),
  findings: z.array(runFinding),
  imbalance: z.number(),
  balanced: z.boolean(),
  waveform: runWaveform.nullable(),
  close: runWaveform.nullable(),
});
export type OperatingPoint = z.infer<typeof operatingPoint>;

/** The file that a computed exhibit of this recipe names. */
export const simulation = z.strictObject({
  format: z.literal(SIMULATION_FORMAT),
  recipe: z.literal(SIMULATION_RECIPE),
  key: z.string(),
  level: runLevel,
  assumptions: z.array(runAssumption),
  leftOut: z.array(words),
  points: z.array(operatingPoint),
});
export type Simulation = z.infer<typeof simulation>;
