import { type Refusal, refuse } from '../../core/quantity/refusal.ts';

export function noSuchCase(id: string): Refusal {
  return refuse('no-such-case', id, 'a case of this casebook', { place: '/cases' });
}
