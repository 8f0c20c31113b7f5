import { derive } from '../../formula/derive.ts';
import { turnsRatio } from '../../formula/magnetics/turns-ratio.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, uncertainty } from '../../trace/derived.ts';
import { facesOf } from '../barrier/winding-place.ts';
import type { Bench } from '../bench/bench.ts';
import type { StackFacts, Winding } from './stack-facts.ts';
import { readStackValue } from './stack-value.ts';

export interface Turns {
  readonly primaries: readonly Winding[];
  readonly secondary: Winding | null;
  readonly primary: Derived | null;
  readonly ratio: Derived | null;
  /** Ratio by turns and as the waveforms show it, where the two cannot both be right. */
  readonly disagree: { readonly counted: number; readonly seen: number } | null;
  /** What stands in the way of a ratio: keys of missing numbers. */
  readonly missing: readonly string[];
}

const BLIND_SHARE = 0.03; // without a stated doubt two ratios agree within a turn or so
const SPREAD = 2;

/** Primary turns, the secondary, and their ratio. Counted and seen ratios that disagree leave none: neither is chosen. */
export function turnsOf(bench: Bench, stack: StackFacts): Turns {
  const of = (side: 'mains' | 'hand', role: Winding['role']): Winding[] => {
    const own = stack.windings.filter((winding) => facesOf(winding) === side && winding.role !== 'screen');
    const named = own.filter((winding) => winding.role === role);
    return named.length > 0 ? named : own.length === 1 && own[0]!.role === null ? own : [];
  };
  const primaries = of('mains', 'primary');
  const secondaries = of('hand', 'secondary');
  const [secondary] = secondaries;
  const alike = secondaries.every(({ turns }) => turns.at !== null && turns.at.value === secondary?.turns.at?.value);
  const primary = primaries.length > 0 && primaries.every(({ turns }) => turns.at !== null) ? inSeries(stack, primaries) : null;
  const missing = [
    ...(primary === null ? ['primaryTurns'] : []),
    ...(secondary === undefined || secondary.turns.at === null ? ['secondaryTurns'] : alike ? [] : ['oneSecondary']),
  ];
  const at = `/exhibits/${stack.exhibit.id}/ratioSeen`;
  const seen = readStackValue(bench, stack.exhibit, stack.exhibit.ratioSeen, at, 'ratio', 'n').at;
  const counted =
    missing.length > 0 || primary === null || secondary?.turns.at == null
      ? null
      : derive(turnsRatio, { primary, secondary: secondary.turns.at }, `transformer/${stack.part.id}/ratio`);
  const disagree = counted !== null && seen !== null && apart(counted, seen) ? { counted: counted.value, seen: seen.value } : null;
  return {
    primaries,
    secondary: alike ? (secondary ?? null) : null,
    primary,
    ratio: disagree === null ? (counted ?? seen) : null,
    disagree,
    missing: disagree === null ? (seen === null ? missing : []) : ['ratiosThatAgree'],
  };
}

function apart(a: Derived, b: Derived): boolean {
  const [one, other] = [uncertainty(a), uncertainty(b)];
  const allowed = one === null || other === null ? BLIND_SHARE * a.value : Math.max(SPREAD * Math.hypot(one, other), BLIND_SHARE * a.value);
  return Math.abs(a.value - b.value) > allowed;
}

/** Parts of one primary, wound apart, are in series. */
function inSeries(stack: StackFacts, windings: readonly Winding[]): Derived {
  const [only] = windings;
  if (windings.length === 1) return only!.turns.at!;
  const named = Object.fromEntries(windings.map(({ id, turns }) => [id, turns.at!]));
  return combine(
    {
      kind: 'reduce',
      unit: '1',
      formula: null,
      symbols: Object.fromEntries(windings.map(({ id }) => [id, `N_${id}`])),
      moves: Object.fromEntries(windings.map(({ id }) => [id, 'up' as const])),
      compute: (plain) => Object.values(plain).reduce((sum, one) => sum + one, 0),
    },
    named,
    { id: `transformer/${stack.part.id}/primary-turns`, name: 'turnsInSeries', symbol: 'N_p' },
  );
}
