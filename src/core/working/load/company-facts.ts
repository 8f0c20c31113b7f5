import { derive } from '../../formula/derive.ts';
import { power } from '../../formula/load/power.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { combine } from '../../trace/combine.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { deriveReading, deriveTyped } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';
import { heldCurrent } from './held-current.ts';
import { otherLoads } from './other-loads.ts';
import { nameplateOf, unitNameplate } from './power-facts.ts';
import type { Sweep } from './read-sweep.ts';
import type { LevelFacts } from './sweep-facts.ts';

const OVER = 0.02; // share by which a neighbour's load may exceed what is printed for it and still be a fair load

/** A sweep of one port with neighbours loaded: what all gave together, and what they should. Powers at nominal voltages. */
export interface CompanyRun {
  readonly sweep: Sweep;
  /** The neighbours that were loaded, by id, sorted. */
  readonly company: readonly string[];
  readonly measured: Derived;
  /** What this port's own print and the neighbours' loads come to, but no more than the printed total unless a neighbour is overdrawn. */
  readonly wanted: Derived;
  /** The whole printed total was asked for. */
  readonly whole: boolean;
  /** A neighbour drew more than is printed for it. */
  readonly overdrawn: boolean;
  /** Voltage of each neighbour meanwhile. */
  readonly watched: readonly {
    readonly level: LevelFacts;
    readonly field: string;
    readonly opened: Opened<string>;
    readonly voltage: Derived | null;
  }[];
}

/** What all ports together are printed to give: a claim of the "total", else the sum of the ports where each has one level. Null where neither is known. */
export function printedTotal(bench: Bench, levels: readonly LevelFacts[]): Derived | null {
  for (const label of exhibitsOf(bench, 'label').filter(({ struck }) => struck === undefined)) {
    for (const { id, of, value } of label.claims ?? []) {
      const text = of === 'total' ? findRead(value) : null;
      const watts = text === null ? null : parseQuantity(text, 'power');
      if (text !== null && watts !== null && !isRefusal(watts))
        return deriveTyped(text, 'power', `/exhibits/${label.id}/claims/${id}/value`, 'claimedTotal', 'P_c');
      const total = text === null ? null : parseQuantity(text, 'current');
      const nominal = sameNominal(levels);
      if (text !== null && total !== null && !isRefusal(total) && nominal !== null)
        return derive(
          power,
          { voltage: nominal, current: deriveTyped(text, 'current', `/exhibits/${label.id}/claims/${id}/value`, 'claimedTotal', 'I_c') },
          'load/claimed-total',
        );
    }
  }
  return bench.one.ports.every((port) => port.levels.length === 1) ? unitNameplate(levels) : null;
}

function sameNominal(levels: readonly LevelFacts[]): Derived | null {
  const nominal = levels[0]?.window?.nominal ?? null;
  return nominal !== null && levels.every(({ window }) => window?.nominal.value === nominal.value) ? nominal : null;
}

export function companyRuns(bench: Bench, levels: readonly LevelFacts[], port: string, total: Derived): CompanyRun[] {
  return levels
    .filter((level) => level.port.id === port)
    .flatMap((level) => level.inCompany.flatMap(({ sweep }) => companyRun(bench, levels, level, sweep, total) ?? []));
}

function companyRun(bench: Bench, levels: readonly LevelFacts[], level: LevelFacts, sweep: Sweep, total: Derived): CompanyRun | null {
  const own = nameplateOf(level);
  const loads = otherLoads(bench, sweep.exhibit, sweep.port);
  const held = level.window === null ? null : heldCurrent(sweep, level.window);
  if (loads.length === 0 || own === null || held === null) return null;
  const at = `load/${sweep.exhibit.id}`;
  const neighbours = loads.map((load, index) => {
    const theirs = levels.find((one) => one.port.id === load.port && one.level.id === (load.level ?? one.port.levels[0]?.id));
    const quantity = typeof load.draws === 'string' ? parseQuantity(load.draws, 'current') : null;
    if (theirs === undefined || theirs.window === null || quantity === null || isRefusal(quantity)) return null;
    const current = deriveReading(bench, quantity, {
      field: `/exhibits/${sweep.exhibit.id}/under/loads/${index}`,
      role: 'outputCurrent',
      day: sweep.exhibit.day,
      symbol: 'I',
    });
    return {
      level: theirs,
      draws: derive(power, { voltage: theirs.window.nominal, current }, `${at}/neighbour-${index + 1}/power`),
      over: theirs.claim !== null && current.value > theirs.claim.value * (1 + OVER),
    };
  });
  if (neighbours.some((one) => one === null)) return null;
  const known = neighbours.filter((one) => one !== null);
  const theirs = known.map(({ draws }) => draws);
  const asked = sumOfPowers([own, ...theirs], `${at}/asked-together`, 'askedTogether');
  const overdrawn = known.some(({ over }) => over);
  return {
    sweep,
    company: [...new Set(known.map((one) => one.level.port.id))].sort(),
    measured: sumOfPowers(
      [derive(power, { voltage: level.window!.nominal, current: held }, `${at}/own-power`), ...theirs],
      `${at}/held-together`,
      'heldTogether',
    ),
    wanted: overdrawn || asked.value < total.value ? asked : total,
    whole: asked.value >= total.value * (1 - OVER),
    overdrawn,
    watched: known.map(({ level: other }) => watch(bench, sweep, other)),
  };
}

function watch(bench: Bench, sweep: Sweep, level: LevelFacts): CompanyRun['watched'][number] {
  const one = sweep.exhibit.others?.find(({ port }) => port === level.port.id);
  const field = `/exhibits/${sweep.exhibit.id}/others/${one?.id ?? level.port.id}/voltage`;
  const opened = openValue<string>(one?.voltage);
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, 'voltage') : null;
  const voltage =
    quantity === null || isRefusal(quantity)
      ? null
      : deriveReading(bench, quantity, { field, role: 'outputVoltage', day: sweep.exhibit.day, symbol: 'V' });
  return { level, field, opened, voltage };
}

/** Powers added up, as one step. */
export function sumOfPowers(parts: readonly Derived[], id: string, name: string): Derived {
  const named = Object.fromEntries(parts.map((part, index) => [`p${index + 1}`, part]));
  const each = <T>(of: (key: string) => T): Record<string, T> => Object.fromEntries(Object.keys(named).map((key) => [key, of(key)]));
  return combine(
    {
      kind: 'reduce',
      unit: 'W',
      formula: null,
      symbols: each((key) => key.replace('p', 'P_')),
      moves: each(() => 'up' as const),
      compute: (plain) => Object.values(plain).reduce((all, one) => all + one, 0),
    },
    named,
    { id, name, symbol: 'P' },
  );
}
