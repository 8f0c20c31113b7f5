import type { Sense } from '../plan.ts';

/** A watch of a controller: fires when sign · sense + offset rises above zero (and the second one stands above zero too); `row` is the sense's number. */
export interface ControlWatch {
  readonly row: number;
  readonly sign: 1 | -1;
  readonly offset: number;
  readonly also?: { readonly row: number; readonly sign: 1 | -1; readonly offset: number };
}

/** A controller as a machine that is woken by what it watches and at times it asked for. Times are ticks (topology.ts). */
export interface ControlUnit {
  readonly ref: string;
  /** Switch it drives. */
  readonly drives: string;
  readonly senses: readonly Sense[];
  /** The switch is on; the controller is awake and draws its running current. */
  readonly on: boolean;
  readonly running: boolean;
  watches(): readonly ControlWatch[];
  /** Next time it wants to be woken; infinity for never. */
  due(): number;
  /** Looks at its pins now and does what is due. */
  wake(tick: number, read: (sense: number) => number): void;
  /** Plain data, enough to go on from. */
  save(): ControlState;
  load(state: ControlState): void;
  /** What became of it, in one word, for the grid of faults. */
  readonly counts: ControlCounts;
}
/** Kept as text, a time that never comes reads as null. */
export type ControlState = Readonly<Record<string, number | boolean | null>>;
export const timeOf = (state: ControlState, key: string): number => (state[key] as number | null) ?? Number.POSITIVE_INFINITY;
export interface ControlCounts {
  pulses: number;
  /** Pulses ended by the current limit itself. */
  limited: number;
  starts: number;
  /** Times it went on after a pause for lack of load. */
  bursts: number;
  latched: boolean;
}

export const above = (sense: number, volts: number): ControlWatch => ({ row: sense, sign: 1, offset: -volts });
export const below = (sense: number, volts: number): ControlWatch => ({ row: sense, sign: -1, offset: volts });
