import type { Case } from '../core/evidence/case.ts';
import type { Markup } from '../present/markup/markup.ts';
import type { Point } from '../present/schematic/geometry.ts';
import type { PartMark } from '../present/schematic/part-mark.ts';
import type { Zone } from '../present/schematic/schematic-input.ts';

/** Everything here can be copied to a worker thread. */
export interface DrawOptions {
  /** Corners of symbols moved by hand, by part. */
  readonly moves?: ReadonlyMap<string, Point>;
  /** Parts with a finding or a slip on them. */
  readonly marks?: ReadonlyMap<string, PartMark>;
  /** For a page on which parts and nets answer. */
  readonly live?: boolean;
}

export interface DrawnCircuit {
  readonly figure: Markup;
  /** x of the barrier in the drawing; null where nothing crosses one. */
  readonly barrier: number | null;
  readonly places: readonly { readonly part: string; readonly zone: Zone; readonly at: Point }[];
}

export type DrawCircuit = (one: Case, options: DrawOptions) => Promise<DrawnCircuit | null>;
