import { z } from 'zod';
import { id, words } from '../typed.ts';

/** Where the temperatures of a soak are going. */
export const HEATING_RECIPE = 'soak/heating-curve/1';
export const HEATING_FORMAT = 'mainsworthy-heating-curves/1';

const seconds = z.number();

/** Something that is no part of heating up happened at `atS`; what came before was left out of the fit. */
export const change = z.strictObject({ of: z.enum(['load', 'ambient', 'cooling']), atS: seconds });

/** A fitted channel. Times in seconds of the log, temperatures in kelvin. */
export const fittedCurve = z.strictObject({
  shape: z.enum(['one', 'two']),
  /** T = end - rise exp(-(t - fromS) / timeConstant) - fastRise exp(-(t - fromS) / fastTimeConstant). */
  outputs: z.array(
    z.strictObject({
      name: z.enum(['end', 'rise', 'timeConstant', 'fastRise', 'fastTimeConstant']),
      value: z.number(),
      unit: z.enum(['K', 'ΔK', 's']),
    }),
  ),
  /** Of the outputs, in their order; row by row. */
  covariance: z.array(z.array(z.number())),
  fromS: seconds,
  toS: seconds,
  readings: z.number().int().positive(),
  bins: z.number().int().positive(),
  freedom: z.number().int().positive(),
  /** Standard deviation of one reading about the curve, K. */
  scatter: z.number(),
  /** Correlation of neighbouring residuals; what is beyond chance widens the covariance. */
  correlation: z.number(),
  /** Half of the 95 % interval of the end by the fit alone, K; and how many more seconds of log would bring it to `withinK`. */
  endWithin: z.number(),
  withinK: z.number(),
  stillNeededS: z.number().nullable(),
});

export const heatingChannel = z.strictObject({
  column: id,
  place: id,
  /** Rising: the slope grows, twice in a row; nothing is extrapolated from it. */
  outcome: z.enum(['fitted', 'refused', 'rising']),
  fit: fittedCurve.optional(),
  refusal: z.strictObject({ code: words, got: words, expected: words }).optional(),
  changes: z.array(change),
  /** One step of the display, K. */
  lastDigit: z.number(),
  /** Kelvin per second over the last part of the log. */
  lastSlope: z.number(),
  lastAtS: seconds,
  lastK: z.number(),
  /** Ambient over the readings used: mean and half of its span; null where none was logged. */
  ambient: z.strictObject({ mean: z.number(), half: z.number() }).nullable(),
  /** Means of at most 240 stretches, to be drawn: second, kelvin. */
  points: z.array(z.tuple([z.number(), z.number()])),
});
export type HeatingChannel = z.infer<typeof heatingChannel>;
export type FittedCurve = z.infer<typeof fittedCurve>;

/** The file that a computed exhibit of this recipe names. */
export const heatingCurves = z.strictObject({
  format: z.literal(HEATING_FORMAT),
  recipe: z.literal(HEATING_RECIPE),
  soak: id,
  key: z.string(),
  channels: z.array(heatingChannel),
});
export type HeatingCurves = z.infer<typeof heatingCurves>;
