import { z } from 'zod';
import { GRADES } from '../source/grade.ts';
import { barrierMap } from './barrier-map.ts';
import { circuit } from './circuit-result.ts';
import { transformerSheet } from './transformer-sheet.ts';

export type { CircuitResult } from './circuit-result.ts';

/**
 * The Assessment: the one documented result. Screens, command line and reports only draw it. Numbers are SI (kelvin too) with twelve
 * significant digits; lists are sorted; sentences are not in here, words live in `present/words`.
 */
export const ASSESSMENT_FORMAT = 'mainsworthy-assessment/1';

export const grade = z.enum(GRADES);
export const HAZARDS = ['shock', 'fire', 'burn', 'harm', 'delivery', 'endurance', 'interference', 'labelling'] as const;
export const hazard = z.enum(HAZARDS);
export type Hazard = z.infer<typeof hazard>;
/** Worst first. */
export const CONSEQUENCES = ['lethal', 'injurious', 'damaging', 'disappointing', 'informative'] as const;
export const consequence = z.enum(CONSEQUENCES);
export type Consequence = z.infer<typeof consequence>;
export const outcome = z.enum(['pass', 'fail', 'inconclusive', 'notAssessed', 'notApplicable']);
export type Outcome = z.infer<typeof outcome>;
export const rung = z.enum(['bridgedOrAbsent', 'belowBasic', 'basicNotReinforced', 'undecided', 'reinforcedMet', 'basicMet']);
export type Rung = z.infer<typeof rung>;
export const FAILURES = ['Dangerous', 'Unsafe', 'Harmful to devices', 'Below its claims', 'Nothing found wrong', 'No verdict yet'] as const;
export const failure = z.enum(FAILURES);
export type Failure = z.infer<typeof failure>;
export const coverage = z.enum(['examined', 'partly examined', 'not examined']);
export type Coverage = z.infer<typeof coverage>;
export const REASONS = [
  'met',
  'notMet',
  'withinUncertainty',
  'uncertaintyUnknown',
  'oneSided',
  'branchesDisagree',
  'outOfRange',
  'unknownValue',
  'notLooked',
  'cannotNow',
  'notComparable',
  'refusedEvidence',
  'contradicted',
  'limitUnknown',
  'notImplemented',
  'doesNotApply',
  'struck',
] as const;
export const reason = z.enum(REASONS);
export type Reason = z.infer<typeof reason>;

/** SI. `side` makes a one-sided value: the true value lies below or above `value`; u is then null. u null = unknown, never zero. */
export const amount = z.strictObject({
  value: z.number(),
  unit: z.string(),
  u: z.number().nullable(),
  side: z.enum(['below', 'above', 'anywhere']).optional(),
});
export type Amount = z.infer<typeof amount>;
/** A quantity, or what was found in one word: a class, a kind, "absent". */
export const measured = z.union([amount, z.strictObject({ word: z.string() })]);
export type Measured = z.infer<typeof measured>;

export const sourceRecord = z.strictObject({
  publication: z.string(),
  edition: z.string(),
  place: z.string(),
  grade,
  checked: z.string(),
  alsoBy: z.array(z.string()).optional(),
  disagrees: z.array(z.string()).optional(),
});

export const limit = z.strictObject({
  kind: z.enum(['atMost', 'atLeast', 'within', 'oneOf']),
  /** Key for the words: which limit this is ("fail", "comfort", "basic", "es1"). */
  name: z.string(),
  at: amount.optional(),
  to: amount.optional(),
  words: z.array(z.string()).optional(),
  source: sourceRecord,
  grade,
  step: z.string().optional(),
});
export type Limit = z.infer<typeof limit>;

export const finding = z.strictObject({
  /** check@subject, stable over runs and versions. */
  id: z.string(),
  check: z.string(),
  subject: z.string().nullable(),
  /** The subject in the case's own names, for a reader. */
  about: z.string().nullable(),
  hazard,
  /** Of this finding: a rung or a level can lower or raise the check's. */
  consequence,
  rung: rung.optional(),
  outcome,
  reason,
  state: z.enum(['tested', 'labelLoad', 'worstSustained', 'shorted']).optional(),
  measured: measured.nullable(),
  limit: limit.nullable(),
  /** Comparison editions or standards: shown, not deciding. */
  others: z.array(limit),
  /** Ratio for every kind: 1 at the limit, above 1 beyond it; null = no ratio or infinite. */
  margin: z.number().nullable(),
  /** Ratio at the ends of the 95 % interval, lower first. */
  marginBand: z.tuple([z.number(), z.number()]).nullable(),
  /** Temperatures: rise found and rise permitted, in kelvin, both above the same `ambient` (K). The margin is their ratio. */
  rise: z.strictObject({ found: z.number(), permitted: z.number(), ambient: z.number() }).optional(),
  /** Of conformity, 0 to 1. */
  probability: z.number().nullable(),
  /** False: fails against a memory-grade limit by less than 1.3, so it cannot set the headline. */
  headline: z.boolean(),
  show: z.enum(['percent', 'hours', 'minutes', 'milliamperes', 'millimetres']).optional(),
  /** Another finding that asks the same of the same thing: where both fail it is one defect, which the verdict names by the other. */
  sameAs: z.string().optional(),
  step: z.string().nullable(),
  /** Fields of the case that decide it. */
  fields: z.array(z.string()),
  /** Conditions of the exhibit that decides it, as typed: mains, supply, orientation, ambient, cover, loads, minutes. */
  under: z.record(z.string(), z.string()),
  /** Remarks: a key for the words with what to put into them. */
  notes: z.array(z.strictObject({ key: z.string(), args: z.record(z.string(), z.union([z.string(), z.number()])) })),
});
export type Finding = z.infer<typeof finding>;

export const cell = z.strictObject({ check: z.string(), state: z.enum(['settled', 'inconclusive', 'notAssessed', 'notApplicable']) });
export type Cell = z.infer<typeof cell>;

export const verdict = z.strictObject({
  failure,
  /** The worse word it would carry if memory-grade limits hold; never hidden. */
  doubtful: failure.nullable(),
  coverage: z.strictObject({ shock: coverage, fire: coverage }),
  cells: z.strictObject({ shock: z.array(cell), fire: z.array(cell) }),
  missing: z.array(z.strictObject({ check: z.string(), reason })),
  decidedBy: z.array(z.string()),
  doubtfulBy: z.array(z.string()),
  /** Lower words that apply too, worst first, with the findings that carry them. */
  also: z.array(z.strictObject({ failure, by: z.array(z.string()) })),
  /** Weakest grade of the limits that decide. */
  grade: grade.nullable(),
});
export type Verdict = z.infer<typeof verdict>;

export const step = z.strictObject({
  id: z.string(),
  kind: z.enum(['reading', 'typed', 'constant', 'lookUp', 'formula', 'choice', 'reduce']),
  name: z.string(),
  symbol: z.string().nullable(),
  value: z.number().nullable(),
  word: z.string().optional(),
  unit: z.string().nullable(),
  u: z.number().nullable(),
  side: z.enum(['below', 'above', 'anywhere']).optional(),
  show: z.enum(['percent', 'hours', 'minutes', 'milliamperes', 'millimetres']).optional(),
  formula: z.string().nullable(),
  uses: z.array(z.strictObject({ step: z.string(), symbol: z.string(), sensitivity: z.number().nullable() })),
  /** Uncertainty budget: what contributes, in the step's own unit; sorted, largest first. */
  budget: z.array(
    z.strictObject({
      leaf: z.string(),
      means: z.string(),
      args: z.record(z.string(), z.union([z.string(), z.number()])),
      u: z.number().nullable(),
      share: z.number().nullable(),
    }),
  ),
  source: sourceRecord.nullable(),
  field: z.string().optional(),
  notes: z.array(z.strictObject({ key: z.string(), args: z.record(z.string(), z.union([z.string(), z.number()])) })),
});
export type Step = z.infer<typeof step>;

export const nextMeasurement = z.strictObject({
  id: z.string(),
  /** Key for the words: what to measure. */
  measure: z.string(),
  about: z.array(z.string()),
  settles: z.array(z.string()),
  /** The word if all of it comes out well, and the worst it could come out. */
  best: failure,
  worst: failure,
  hazard: z.array(z.string()),
  stop: z.array(z.strictObject({ of: z.string(), about: z.string(), at: amount, step: z.string().nullable() })),
  /** The point of no return before which it must be done. */
  before: z.enum(['opening', 'desoldering', 'unwinding']).nullable(),
});
export type Next = z.infer<typeof nextMeasurement>;

/** One voltage left after unplugging; `touchable` is on which side of the direct voltage that may be touched it lies. */
const residualReading = z.strictObject({
  field: z.string(),
  volts: amount,
  step: z.string(),
  /** Seconds since unplugging. */
  after: z.number().nullable(),
  energy: amount.extend({ step: z.string() }).nullable(),
  touchable: z.enum(['below', 'above', 'unclear']),
});

/** A load sweep as judged, ready to be drawn: voltages at the place the claim is about. */
export const curve = z.strictObject({
  exhibit: z.string(),
  port: z.string(),
  level: z.string(),
  mains: z.number().nullable(),
  frequency: z.number().nullable(),
  order: z.enum(['up', 'down']),
  sense: z.enum(['socket', 'cableEnd']),
  /** Current, voltage, half of the 95 % interval of the voltage, input power. */
  points: z.array(z.strictObject({ i: z.number(), v: z.number(), U: z.number().nullable(), pin: z.number().nullable() })),
  window: z.tuple([z.number(), z.number()]).nullable(),
  claim: z.number().nullable(),
  held: z.string().nullable(),
  ends: z.string().nullable(),
});
export type Curve = z.infer<typeof curve>;

/** A logged place of a soak with the curve that was fitted and kept. Seconds of the log, kelvin. */
export const soakCurve = z.strictObject({
  exhibit: z.string(),
  column: z.string(),
  place: z.string(),
  name: z.string(),
  outside: z.boolean(),
  state: z.enum(['tested', 'labelLoad', 'worstSustained', 'shorted']),
  ambient: z.number().nullable(),
  /** Rising: the slope grows; nothing is extrapolated. */
  outcome: z.enum(['fitted', 'refused', 'rising']),
  refusal: z.strictObject({ code: z.string(), got: z.string(), expected: z.string() }).nullable(),
  changes: z.array(z.strictObject({ of: z.enum(['load', 'ambient', 'cooling']), atS: z.number() })),
  /** The soak has to end at once, whatever the temperature. */
  endNow: z.boolean(),
  /** K/s over the last part of the log. */
  lastSlope: z.number(),
  points: z.array(z.tuple([z.number(), z.number()])),
  /** The fitted curve from the first reading used to beyond the last. */
  curve: z.array(z.tuple([z.number(), z.number()])),
  fit: z
    .strictObject({
      end: z.number(),
      /** Half of the 95 % interval of the end, with meter and room in it. */
      U: z.number().nullable(),
      step: z.string(),
      shape: z.enum(['one', 'two']),
      fromS: z.number(),
      toS: z.number(),
      timeConstantS: z.number(),
      /** The same by the fit alone, what was asked for, and how many more seconds of log that takes. */
      fitWithin: z.number(),
      withinK: z.number(),
      stillNeededS: z.number().nullable(),
    })
    .nullable(),
  /** Limits that the end was held against, where they lie at the ambient of the log. */
  limits: z.array(z.strictObject({ finding: z.string(), at: z.number() })),
  /** Where the soak is to be ended, and the second of the log at which that is reached; null: never. */
  stop: z.strictObject({ at: z.number(), step: z.string(), reachedAtS: z.number().nullable() }).nullable(),
});
export type SoakCurve = z.infer<typeof soakCurve>;
/** A thermal picture with the regions drawn on it; pixels count from 0 at the top left, temperatures in kelvin. */
export const thermalPictureSheet = z.strictObject({
  exhibit: z.string(),
  state: z.enum(['tested', 'labelLoad', 'worstSustained', 'shorted']),
  cover: z.string().nullable(),
  regions: z.array(
    z.strictObject({
      id: z.string(),
      name: z.string(),
      points: z.array(z.tuple([z.number(), z.number()])),
      takes: z.enum(['hottest', 'mean']),
      /** As the camera shows them, before emissivity. */
      hottest: z.number(),
      hottestAt: z.tuple([z.number(), z.number()]),
      mean: z.number(),
      pixels: z.number(),
      /** Of the surface; null where it was refused, with the key of the reason. */
      surface: amount.nullable(),
      refused: z.string().nullable(),
      step: z.string().nullable(),
    }),
  ),
});
export type ThermalPictureSheet = z.infer<typeof thermalPictureSheet>;

export const assessment = z.strictObject({
  format: z.literal(ASSESSMENT_FORMAT),
  tool: z.string(),
  rules: z.strictObject({ version: z.string(), sha256: z.string() }),
  case: z.strictObject({
    id: z.string(),
    product: z.string(),
    name: z.string(),
    sample: z.string(),
    sha256: z.string(),
    invented: z.boolean(),
  }),
  setting: z.record(z.string(), z.strictObject({ value: z.string(), from: z.enum(['case', 'default']), source: sourceRecord.nullable() })),
  /** Who, when, with what: as the case says, for the head of a report. */
  bench: z.strictObject({
    examinedBy: z.string().nullable(),
    bought: z.strictObject({ where: z.string(), date: z.string(), price: z.string().nullable() }).nullable(),
    days: z.array(z.strictObject({ id: z.string(), date: z.string(), under: z.record(z.string(), z.string()) })),
    events: z.array(z.strictObject({ at: z.string(), what: z.string(), note: z.string().nullable() })),
    instruments: z.array(
      z.strictObject({ id: z.string(), name: z.string(), calibrated: z.string().nullable(), roles: z.array(z.string()) }),
    ),
    /** Every exhibit with its kind and whether a check of this version reads it. */
    exhibits: z.array(z.strictObject({ id: z.string(), kind: z.string(), at: z.string().nullable(), struck: z.boolean() })),
  }),
  verdict,
  /** In order of hazard, check, subject. */
  findings: z.array(finding),
  /** Each after the steps it uses. */
  steps: z.array(step),
  /** The formulas that the steps used. */
  formulas: z.record(
    z.string(),
    z.strictObject({
      tex: z.string(),
      text: z.string(),
      validity: z.string(),
      symbol: z.string(),
      means: z.string(),
      inputs: z.array(z.strictObject({ symbol: z.string(), means: z.string() })),
    }),
  ),
  curves: z.array(curve),
  soaks: z.array(soakCurve),
  /** Left out where no region was drawn. */
  pictures: z.array(thermalPictureSheet).optional(),
  /** Left out where no circuit was traced. */
  circuit: circuit.optional(),
  barrier: barrierMap.optional(),
  transformers: z.array(transformerSheet).optional(),
  next: z.array(nextMeasurement),
  /** What the bulk capacitors of this unit can hold at the highest mains, for the caution; null before the board is read. */
  stored: z.strictObject({ energy: amount, crest: amount, parts: z.array(z.string()), step: z.string() }).nullable(),
  /** Voltages that somebody measured on the capacitors before touching anything; left out where nobody did. */
  residuals: z
    .array(
      z.strictObject({
        exhibit: z.string(),
        across: z.string().nullable(),
        limit,
        first: residualReading,
        later: residualReading.nullable(),
      }),
    )
    .optional(),
  lastChance: z.array(z.strictObject({ before: z.enum(['opening', 'desoldering', 'unwinding']), measure: z.array(z.string()) })),
  claims: z.array(
    z.strictObject({
      claim: z.string(),
      claimed: amount,
      measured: amount,
      share: z.number(),
      probability: z.number().nullable(),
      finding: z.string(),
    }),
  ),
  /** Exhibits that are kept but that no check of this version reads. */
  unjudged: z.array(z.strictObject({ exhibit: z.string(), kind: z.string() })),
  stale: z.array(z.strictObject({ computed: z.string(), recipe: z.string() })),
  laboratory: z.array(z.string()),
  warnings: z.array(z.strictObject({ key: z.string(), at: z.string(), args: z.record(z.string(), z.union([z.string(), z.number()])) })),
});
export type Assessment = z.infer<typeof assessment>;
