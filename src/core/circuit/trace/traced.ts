import type { CircuitKind, CircuitSide } from '../circuit.ts';

/** A part as the lines give it: text stays as typed. */
export interface TracedPart {
  readonly ref: string;
  readonly kind: CircuitKind | null;
  /** "?": looked at and not read. Null: not given. */
  readonly value: string | null;
  readonly voltage: string | null;
  readonly current: string | null;
  readonly power: string | null;
  readonly tolerance: string | null;
  readonly safetyClass: string | null;
  readonly marking: string | null;
  /** The person says that it crosses the barrier. */
  readonly crosses: boolean;
  /** Net by the name as typed; null for "?". */
  readonly pins: readonly { readonly pin: string; readonly net: string | null }[];
  /** Of a transformer, in the order of the lines; turns as typed, "?" or null. */
  readonly windings: readonly { readonly name: string; readonly turns: string | null }[];
}

/** What the lines say, before anything is concluded. */
export interface Trace {
  readonly parts: readonly TracedPart[];
  /** Nets whose side was stated, by name. */
  readonly sides: readonly { readonly side: CircuitSide; readonly nets: readonly string[] }[];
}
