import type { Markup } from '../../markup/markup.ts';
import type { Point } from '../geometry.ts';

export type Edge = 'left' | 'right' | 'top' | 'bottom';

export interface ShapePin extends Point {
  readonly pin: string;
  /** The edge of the shape on which the pin ends. */
  readonly edge: Edge;
}

/** A symbol in its own coordinates: the corner is at 0, 0 and every pin lies on the grid and on an edge. */
export interface Shape {
  readonly width: number;
  readonly height: number;
  readonly pins: readonly ShapePin[];
  readonly art: Markup;
  /** Texts that belong to the symbol (names of pins), with their anchor. */
  readonly texts: readonly { readonly at: Point; readonly anchor: 'start' | 'middle' | 'end'; readonly text: string }[];
}

/** Which way is out of the shape. */
export const EDGE_STEP: Readonly<Record<Edge, { readonly dx: -1 | 0 | 1; readonly dy: -1 | 0 | 1 }>> = {
  left: { dx: -1, dy: 0 },
  right: { dx: 1, dy: 0 },
  top: { dx: 0, dy: -1 },
  bottom: { dx: 0, dy: 1 },
};
