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
const REST_MS = 300_000; // how long the thread waits for the next drawing before it gives its memory back
const WARM_MS = 1500; // after the start: the first page is served before the layout engine is read in
/** A circuit of two parts that share a net: enough for the layout engine to be read in and to have run once. */
const SMALL = {
  format: 'mainsworthy-case/1',
  id: 'warm',
  product: { id: 'warm', name: '' },
  sample: '',
  setting: { market: 'EU' },
  ...{ instruments: [], days: [], events: [], ports: [], places: [], exhibits: [], files: [] },
  conductors: ['a', 'b', 'c'].map((id) => ({ id, name: id, side: 'mains' as const })),
  parts: ['r1', 'r2'].map((id, index) => ({
    id,
    ref: id,
    kind: 'resistor' as const,
    pins: [
      { pin: '1', net: ['a', 'b'][index]! },
      { pin: '2', net: ['b', 'c'][index]! },
    ],
  })),
} satisfies DrawingMessage['one'];

/** Starts no thread until the first drawing, or until the server has stood for a moment and nothing waits for it. */
export function startDrawingPool(): DrawingPool {
  const pool = new Piscina({
    filename: WORKER,
    minThreads: 0,
    maxThreads: 1,
    idleTimeout: REST_MS,
    ...(FROM_SOURCE ? { execArgv: ['--import', 'tsx'] } : {}),
  });
  const draw: DrawCircuit = (one, options) => pool.run({ one, options } satisfies DrawingMessage) as Promise<DrawnCircuit | null>;
  const warm = setTimeout(() => void draw(SMALL, {}).catch(() => undefined), WARM_MS); // a thread that is stopped meanwhile owes nothing
  warm.unref();
  return {
    draw,
    async close() {
      clearTimeout(warm);
      await pool.destroy();
    },
  };
}
