import { z } from 'zod';
import { conditions } from './conditions.ts';
import { role } from './instrument.ts';
import { date, id, localTime, quantity, words } from './typed.ts';
import { value } from './value.ts';

/** A day at the bench: which instrument did what, and the conditions that hold unless something nearer says otherwise. */
export const day = z.strictObject({
  id,
  date,
  uses: z.partialRecord(role, id),
  leads: z.array(z.strictObject({ id, port: id.optional(), resistance: value(quantity('resistance')) })).optional(),
  under: conditions,
});
export type Day = z.infer<typeof day>;

/** Proposed measurements that need the sample shut, or whole: opening or desoldering takes them away. */
export const LOST_MEASURES = [
  'enclosure',
  'touchBothWays',
  'spotOutside',
  'soakLogged',
  'short',
  'coldInsulation',
  'plugDischarge',
  'advertised',
  'sweep',
  'sweepWithInput',
  'sweepAtEnds',
  'sweepBeyond',
  'portsTogether',
  'idlePower',
  'idleAndStarts',
  'transient',
  'spotWinding',
  'spotParts',
  'spotMaterial',
  'workingVoltage',
] as const;

/** Something after which the sample is not what it was. Opening, desoldering, unwinding and destruction are points of no return. */
export const milestone = z.strictObject({
  id,
  at: localTime,
  what: z.enum(['purchased', 'opened', 'reclosed', 'desoldered', 'unwound', 'destroyed', 'repaired']),
  note: words.optional(),
  /** What had not been measured when the sample went past it and was given up there; as long as it is not closed again. */
  leftOut: z.array(z.strictObject({ id, measure: z.enum(LOST_MEASURES), because: words })).optional(),
});
export type Milestone = z.infer<typeof milestone>;
