import type { Assessment } from '../../core/result/assessment.ts';
import { soakSentence } from '../words/soak-words.ts';

/** What is kept of where one soak is heading. */
export interface SoakView {
  readonly exhibit: string;
  /** What was worked out, a sentence for each place; empty where the log has changed since. */
  readonly sentences: readonly string[];
}

/** A computed result of a soak is kept under its id with this before it. */
const KEPT = 'heating-';

export function toSoakViews({ soaks, stale }: Assessment): SoakView[] {
  const views = new Map<string, string[]>();
  for (const soak of soaks) views.set(soak.exhibit, [...(views.get(soak.exhibit) ?? []), soakSentence(soak)]);
  for (const { computed } of stale) if (computed.startsWith(KEPT)) views.set(computed.slice(KEPT.length), []);
  return [...views].map(([exhibit, sentences]) => ({ exhibit, sentences }));
}
