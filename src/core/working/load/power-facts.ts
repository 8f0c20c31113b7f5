import { derive } from '../../formula/derive.ts';
import { leastPower } from '../../formula/load/least-power.ts';
import { power } from '../../formula/load/power.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { combine } from '../../trace/combine.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { deriveTyped } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';
import type { LevelFacts } from './sweep-facts.ts';

/** A power that is promised: of one level (volts times amperes as printed), or of a port (watts as printed). */
export interface PromisedPower {
  readonly id: string;
  readonly about: string;
  /** Levels at which it may be delivered: any of them will do. */
  readonly levels: readonly LevelFacts[];
  /** Least power that keeps it, at one of those levels; null where that level has no window. */
  readonly least: (level: LevelFacts) => Derived | null;
}

export function promisedPowers(bench: Bench, levels: readonly LevelFacts[]): PromisedPower[] {
  const ofLevels = levels.map((level): PromisedPower => {
    return { id: level.id, about: level.about, levels: [level], least: () => leastOf(level, nameplateOf(level), level.id) };
  });
  const ofPorts = bench.one.ports.flatMap((port): PromisedPower[] => {
    const watts = printedWatts(bench, port.id);
    const own = levels.filter((level) => level.port.id === port.id);
    return watts === null || own.length === 0
      ? []
      : [{ id: port.id, about: nameOf(bench, port.id), levels: own, least: (level) => leastOf(level, watts, `${level.id}-watts`) }];
  });
  return [...ofLevels, ...ofPorts];
}

/** Nominal voltage times the printed current of one level; null where either is missing. */
export function nameplateOf(level: LevelFacts): Derived | null {
  if (level.claim === null || level.window === null || level.claim.value <= 0) return null;
  return derive(power, { voltage: level.window.nominal, current: level.claim }, `load/${level.port.id}/${level.level.id}/nameplate-power`);
}

function leastOf(level: LevelFacts, claimed: Derived | null, id: string): Derived | null {
  if (claimed === null || level.window === null) return null;
  return derive(leastPower, { claimed, edge: level.window.least, nominal: level.window.nominal }, `load/${id}/least-power`);
}

/** Watts that the label or the seller prints for a port: a claim `of` that port, or of nothing in particular on a unit with one port. */
function printedWatts(bench: Bench, port: string): Derived | null {
  const only = bench.one.ports.length === 1;
  for (const label of exhibitsOf(bench, 'label')) {
    if (label.struck !== undefined) continue;
    for (const claim of label.claims ?? []) {
      const text = findRead(claim.value);
      const quantity = text === null ? null : parseQuantity(text, 'power');
      const mine = claim.of === port || (claim.of === undefined && only);
      if (mine && text !== null && quantity !== null && !isRefusal(quantity) && quantity.value > 0)
        return deriveTyped(text, 'power', `/exhibits/${label.id}/claims/${claim.id}/value`, 'claimedPower', 'P_c');
    }
  }
  return null;
}

/** Nameplate output power of the whole unit: of each port its largest level, summed over the ports. Null when a port has none. */
export function unitNameplate(levels: readonly LevelFacts[]): Derived | null {
  const ports = [...new Set(levels.map(({ port }) => port.id))];
  const largest = ports.map((port) => {
    const own = levels.filter((level) => level.port.id === port).flatMap((level) => nameplateOf(level) ?? []);
    return own.toSorted((a, b) => b.value - a.value)[0] ?? null;
  });
  const known = largest.filter((one) => one !== null);
  if (known.length === 0 || known.length < largest.length) return null;
  if (known.length === 1) return known[0]!;
  const named = Object.fromEntries(known.map((one, index) => [`p${index + 1}`, one]));
  return combine(
    {
      kind: 'reduce',
      unit: 'W',
      formula: null,
      symbols: Object.fromEntries(Object.keys(named).map((key, index) => [key, `P_${index + 1}`])),
      moves: Object.fromEntries(Object.keys(named).map((key) => [key, 'up' as const])),
      compute: (plain) => Object.values(plain).reduce((sum, one) => sum + one, 0),
    },
    named,
    { id: 'load/nameplate-sum', name: 'nameplateSum', symbol: 'P' },
  );
}
