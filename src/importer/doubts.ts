import { type Refusal, refuse } from '../core/quantity/refusal.ts';
import type { Doubt, Settled } from './instrument-file.ts';

/** An answer to a question that the file does not raise: a slip of whoever types it, or kept from a version that still asked. */
export type Unasked = 'refuse' | 'leave';

/** The questions of one reading: each is asked once, and answered at once when the person has settled it before. */
export class Doubts {
  readonly open: Doubt[] = [];
  /** The first answer that was none of the possible ones. */
  refusal: Refusal | null = null;
  private readonly settled: Settled;
  private readonly unasked: Unasked;
  private readonly asked = new Set<string>();

  constructor(settled: Settled, unasked: Unasked) {
    this.settled = settled;
    this.unasked = unasked;
  }

  /** The person's answer, or null: then the doubt stands open. `accepts` widens the answers beyond the ones listed. */
  ask(doubt: Doubt, accepts?: (answer: string) => boolean): string | null {
    this.asked.add(doubt.code);
    const answer = Object.hasOwn(this.settled, doubt.code) ? this.settled[doubt.code] : undefined;
    if (answer === undefined) {
      this.open.push(doubt);
      return null;
    }
    const isListed = doubt.answers.includes(answer) && !answer.includes('<');
    if (isListed || accepts?.(answer) === true) return answer;
    this.refusal ??= refuse('settled-answer', answer, `one of: ${doubt.answers.join(', ')}`, { place: doubt.code });
    return null;
  }

  /** A refusal when an answer was impossible, or was given to a question this file does not raise. */
  findRefusal(): Refusal | null {
    if (this.refusal !== null || this.unasked === 'leave') return this.refusal;
    for (const code of Object.keys(this.settled)) {
      if (this.asked.has(code)) continue;
      const codes = [...this.asked];
      const expected = codes.length === 0 ? 'no answer, for this file raises no question' : `an answer to one of: ${codes.join(', ')}`;
      return refuse('settled-code', code, expected);
    }
    return null;
  }
}
