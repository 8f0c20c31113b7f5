import { type Derived, uncertainty } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import { normalBelow } from '../../uncertainty/normal.ts';
import type { Way } from './graph.ts';

export const BASIC = 1;
export const DOUBLE = 2;

/** How many layers of insulation something stands for: at least and at most, by what is known. */
export interface Strength {
  readonly low: number;
  readonly high: number;
  /** The best single value, with its doubt, where a distance or a rule gives one. */
  readonly layers: Derived | null;
  readonly notLooked: boolean;
  readonly notes: readonly Note[];
  readonly fields: readonly string[];
}

/** A way across of one case, ready for the map and for a check. */
export interface BarrierWay {
  readonly id: string;
  readonly ends: readonly [string, string];
  readonly kind: 'air' | 'surface' | 'part' | 'optocoupler' | 'through' | 'edge' | 'lead' | 'core' | 'joint';
  /** In the case's own names. */
  readonly about: string;
  readonly strength: Strength;
}

export function asWay({ id, ends, strength }: BarrierWay, which: 'low' | 'high'): Way {
  return { id, ends, strength: strength[which] };
}

export function fixed(low: number, high: number, more: Partial<Strength> = {}): Strength {
  return { low, high, layers: null, notLooked: false, notes: [], fields: [], ...more };
}

/** Nothing is known yet: it may be anything from nothing to reinforced. */
export function open(more: Partial<Strength> = {}): Strength {
  return fixed(0, DOUBLE, more);
}

const BLIND_BAND = 0.1; // with unknown uncertainty a tenth either way is open, as in every comparison (docs/decisions/0003-verdict.md)

/** Ends of the band of a value outside which the decision rule is sure. */
export function bandOf(value: Derived, passAt: number): { low: number; high: number } {
  if (value.side === 'anywhere') return { low: 0, high: DOUBLE };
  if (value.side === 'above') return { low: value.value, high: Math.max(DOUBLE, value.value) };
  if (value.side === 'below') return { low: 0, high: value.value };
  const u = uncertainty(value);
  const half = u === null ? BLIND_BAND * Math.abs(value.value) : quantile(passAt) * u;
  const all = [value.value, ...value.alternatives];
  return { low: Math.max(0, Math.min(...all) - half), high: Math.max(...all) + half };
}

const HALVINGS = 50;
const FARTHEST = 10; // standard deviations

/** Standard normal quantile of a probability above one half, by halving an interval. */
function quantile(probability: number): number {
  let [low, high] = [0, FARTHEST];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
