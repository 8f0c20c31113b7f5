import { type Refusal, sentence } from '../../core/quantity/refusal.ts';

/**
 * Thrown by a method of the port whose result has no room for a refusal, when the disk, and not the caller, is the reason: full, read-only,
 * damaged, held by another. Nothing of the call was kept. Whoever answers a person prints the refusal.
 */
export class CasebookRefused extends Error {
  readonly refusal: Refusal;
  constructor(refusal: Refusal) {
    super(sentence(refusal));
    this.name = 'CasebookRefused';
    this.refusal = refusal;
  }
}
