/** The work of the drawing thread. Nothing of a message is kept: the next one brings its own case. */
import { drawCaseSchematic } from '../app/draw-case-schematic.ts';
import type { DrawnCircuit, DrawOptions } from '../app/drawn-circuit.ts';

export interface DrawingMessage {
  readonly one: Parameters<typeof drawCaseSchematic>[0];
  readonly options: DrawOptions;
}

export default function runDrawing({ one, options }: DrawingMessage): Promise<DrawnCircuit | null> {
  return drawCaseSchematic(one, options);
}
