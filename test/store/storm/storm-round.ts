import { setTimeout } from 'node:timers/promises';
import type { CasebookCheck } from '../../../src/app/casebook/casebook-store.ts';
import { mustOpen } from '../scratch-casebook.ts';
import { startChild } from './child.ts';

/** Fewer acknowledged edits than this make no storm. */
export const LEAST_EDITS = 200;
const MOST_MORE_EDITS = 120;
const MOST_DELAY_MS = 12;
// a linear congruential generator; multiplier and increment of Numerical Recipes, 2nd edition, chapter 7.1 (from memory): any spread will do
const NEXT = (seed: number) => (Math.imul(seed, 1664525) + 1013904223) >>> 0;

export interface Round {
  readonly acknowledged: number;
  readonly lost: readonly string[];
  readonly check: CasebookCheck;
}

/** One storm on a casebook, killed at a moment that follows from the seed; then what the casebook says of what was acknowledged. */
export async function stormRound(path: string, seed: number): Promise<Round> {
  const [first, second] = [NEXT(seed), NEXT(NEXT(seed))];
  const child = startChild('write-storm.ts', [path, String(seed)]);
  await child.said(LEAST_EDITS + (first % MOST_MORE_EDITS));
  await setTimeout(second % MOST_DELAY_MS);
  await child.kill();
  const store = await mustOpen(path); // the lock died with its process
  const lost: string[] = [];
  for (const line of child.lines) {
    const [id = '', revision = '', sha256] = line.split(' ');
    const [kept] = await store.cases.revisions(id, Number(revision), 1);
    if (kept?.revision !== Number(revision) || kept.sha256 !== sha256) lost.push(line);
  }
  const check = await store.check();
  await store.close();
  return { acknowledged: child.lines.length, lost, check };
}
