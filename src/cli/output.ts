import { type Refusal, sentence } from '../core/quantity/refusal.ts';

/** 0 also for a Dangerous unit: the tool worked. */
export const EXIT = { ok: 0, refused: 1, usage: 2, defect: 70, stopped: 130 } as const;

/** Thrown by a command to end with refusals: one sentence each on stderr, exit code 1. */
export class Refused extends Error {
  readonly refusals: readonly Refusal[];
  constructor(refusals: readonly Refusal[]) {
    super('refused');
    this.refusals = refusals;
  }
}

export function printRefusals(refusals: readonly Refusal[]): void {
  for (const refusal of refusals) process.stderr.write(`${sentence(refusal)}\n`);
}

export function print(text: string): void {
  process.stdout.write(text.endsWith('\n') ? text : `${text}\n`);
}

/** Colour only towards a terminal, and never when NO_COLOR is set (no-color.org). */
export function wantsColour(): boolean {
  const { NO_COLOR: no } = process.env;
  return (no === undefined || no === '') && process.stdout.isTTY === true;
}

const WIDEST = 110; // columns; longer lines are hard to read
const USUAL = 90;

export function columns(): number {
  return Math.min(WIDEST, process.stdout.columns ?? USUAL);
}
