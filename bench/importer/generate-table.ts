import { closeSync, openSync, writeSync } from 'node:fs';

/** Seeded tables for the measurements, written to disk in pieces so that the writer's memory does not count. */
export type TableKind = 'plain' | 'log';

const PIECE = 20_000; // rows per write
const MIX = 0x6d2b79f5; // step of the 32-bit mixing counter

function makeDice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + MIX) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

const HEADINGS: Readonly<Record<TableKind, string>> = {
  plain: 'Time (s),Voltage (V)\n',
  log: 'Device;Bench recorder\nWhen;Voltage (V);Current (mA);Case (°C);Mode\n',
};

/** Rows of about 18 bytes (`plain`) or about 50 bytes with clock, decimal commas, missing marks and words (`log`). */
export function generateTable(path: string, kind: TableKind, bytes: number, seed: number): void {
  const dice = makeDice(seed);
  const start = Date.UTC(2031, 4, 3);
  const file = openSync(path, 'w');
  let size = writeSync(file, HEADINGS[kind]);
  for (let row = 0; size < bytes; ) {
    const lines: string[] = [];
    for (let n = 0; n < PIECE; n++, row++) {
      if (kind === 'plain') lines.push(`${(row * 1e-5).toFixed(5)},${((dice() - 0.5) * 10).toFixed(5)}\n`);
      else {
        const when = new Date(start + row * 1000).toISOString().slice(0, 19).replace('T', ' ');
        const numbers = [(5 + dice() / 10).toFixed(4), dice() < 0.01 ? 'OL' : (dice() * 900).toFixed(2), (20 + dice() * 40).toFixed(1)];
        lines.push(`${when};${numbers.join(';').replaceAll('.', ',')};${dice() < 0.5 ? 'CC' : 'CV'}\n`);
      }
    }
    size += writeSync(file, lines.join(''));
  }
  closeSync(file);
}
