/** How finely a run follows its events; house choices, each checked by making it finer (docs/decisions/0012-solver.md). */

/** Share of an event function's size and movement that the straight line through its rates may miss. */
export const TOLERANCE = { screening: 0.5, report: 0.3 } as const;
/** Levels a step may be shortened or lengthened at once. */
export const MOST_DOWN = 4;
export const MOST_UP = 3;
/** The same for a probe, of the range it has covered; a probe asks for no step below `PROBE_LEVEL`. */
export const PROBE_TOLERANCE = { screening: 0.2, report: 0.05 } as const;
/** Before a probe has moved, this share of its value counts as its range. */
export const PROBE_SHARE = 0.02;
export const PROBE_LEVEL = 4;
/** First step in a topology that is new, and the longest of all: 2^6 ticks = 30 ns, 2^21 = 1 ms. */
export const AFTER_EVENT = 6;
/** Strain at which a first step might have been twice as long. */
export const EASY = 1 / 8;
export const LONGEST = 21;
/** Longest step beside a fuse or a thermistor, whose heat is followed step by step: 2^16 ticks = 31 µs. */
export const LONGEST_HEATED = 16;
/** An event may be passed by this many ticks; by as many as 19 or 95 ns where it stands within the slack below. */
export const PAST = 2;
export const PAST_SLACK = { screening: 200, report: 40 } as const;
/** Tries to land on an event before the present one is taken. */
export const LANDINGS = 6;
/** Times controllers may be woken at one instant. */
export const WAKES = 50;
/**
 * How far past its corner a straight piece may be left, volts: both pieces agree there, so that what is missed is of second order. A
 * controller's comparator must be met more closely, since a switch follows it.
 */
export const SLACK = { screening: 5e-3, report: 1e-3 } as const;
export const COMPARATOR_SLACK = 1e-4;
/** Products between two looks at the caller's stop button: about half a millisecond. */
export const LOOK_EVERY = 1024;
