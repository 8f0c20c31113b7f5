import { Piscina } from 'piscina';
import type { DrawCircuit, DrawnCircuit } from '../app/drawn-circuit.ts';
import type { DrawingMessage } from './run-drawing.ts';

export interface DrawingPool {
  /** Draws on a thread of its own: entries are taken meanwhile. */
  readonly draw: DrawCircuit;
  close(): Promise<void>;
}

/** From sources the worker needs the loader that runs them; the built program, whose parts lie beside this folder, does not. */
const FROM_SOURCE = import.meta.url.endsWith('.ts');
const WORKER = new URL(FROM_SOURCE ? './run-drawing.ts' : '../drawing-pool/run-drawing.js', import.meta.url).href;
const REST_MS = 60_000; // how long the thread waits for the next drawing before it gives its memory back
/** Starts no thread until the first drawing: the layout engine takes as much memory as all the rest of a server with the demo casebook. */
export function startDrawingPool(): DrawingPool {
  const pool = new Piscina({
    filename: WORKER,
    minThreads: 0,
    maxThreads: 1,
    idleTimeout: REST_MS,
    ...(FROM_SOURCE ? { execArgv: ['--import', 'tsx'] } : {}),
  });
  const draw: DrawCircuit = (one, options) => pool.run({ one, options } satisfies DrawingMessage) as Promise<DrawnCircuit | null>;
  return { draw, close: () => pool.destroy() };
}
