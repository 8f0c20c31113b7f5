import type { CircuitPart } from '../../core/circuit/circuit.ts';
import type { Foot, Label, NetName } from './block.ts';
import type { Box, Point } from './geometry.ts';
import type { Wire } from './route.ts';
import type { Zone } from './schematic-input.ts';
import type { Shape } from './shape/shape.ts';

export interface PlacedPart {
  readonly part: CircuitPart;
  readonly zone: Zone;
  readonly shape: Shape;
  /** Corner of the symbol on the page. */
  readonly at: Point;
  readonly labels: readonly Label[];
  readonly feet: readonly Foot[];
  readonly names: readonly NetName[];
}

/** A schematic with everything in its place, ready to be drawn. */
export interface Schematic {
  readonly page: Box;
  readonly parts: readonly PlacedPart[];
  readonly wires: readonly Wire[];
  readonly names: readonly NetName[];
  /** x of the barrier; null where nothing crosses one. */
  readonly barrier: number | null;
  readonly netNames: ReadonlyMap<string, string>;
}
