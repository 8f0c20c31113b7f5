import { z } from 'zod';
import { conditions } from './conditions.ts';
import { id, localTime, words } from './typed.ts';

/**
 * The five states of a value: a reading; not looked; absent (looked for, not there: evidence); unknown (looked, could not tell);
 * cannot now (possible once, the sample is destroyed). A missing key means not looked. `marked` is a live marker whose value follows.
 */
export const noValue = z.discriminatedUnion('state', [
  z.strictObject({ state: z.literal('notLooked') }),
  z.strictObject({ state: z.literal('marked'), at: localTime }),
  z.strictObject({ state: z.literal('absent'), because: words, photo: id.optional() }),
  z.strictObject({ state: z.literal('unknown'), because: words, photo: id.optional() }),
  z.strictObject({ state: z.literal('cannotNow'), since: id }),
]);
export type NoValue = z.infer<typeof noValue>;

/** A value with what goes with it: when, with what, under which conditions. `struck` keeps a reading but takes it out, with the reason. */
export function read<T extends z.ZodType>(inner: T) {
  return z.strictObject({
    v: inner,
    at: localTime.optional(),
    instrument: id.optional(),
    how: words.optional(),
    under: conditions.optional(),
    photo: id.optional(),
    note: words.optional(),
    struck: words.optional(),
  });
}

export function value<T extends z.ZodType>(inner: T) {
  return z.union([inner, read(inner), noValue]);
}

export interface Read<T> {
  v: T;
  at?: string | undefined;
  instrument?: string | undefined;
  how?: string | undefined;
  under?: z.infer<typeof conditions> | undefined;
  photo?: string | undefined;
  note?: string | undefined;
  struck?: string | undefined;
}
export type Value<T = string> = T | Read<T> | NoValue;
