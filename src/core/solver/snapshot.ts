import type { ControlUnit } from './controller/control-unit.ts';
import type { HeatState } from './heat.ts';
import type { Plan } from './plan.ts';
import { type RegionTable, restingRegions } from './regions.ts';
import type { Snapshot } from './request.ts';

/** Names by part, numbered where one part has several of a kind. */
function numbered(refs: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return refs.map((ref) => {
    const count = seen.get(ref) ?? 0;
    seen.set(ref, count + 1);
    return `${ref}/${count}`;
  });
}

export function stateNames(plan: Plan): string[] {
  return [
    ...numbered(plan.charges.map(({ ref }) => ref)),
    ...plan.cores.flatMap(({ ref, windings }) => windings.map(({ name }) => `${ref}.${name}`)),
    ...plan.bends.flatMap(({ ref, stored }) => (stored === null ? [] : [`${ref}.stored`])),
    ...plan.lights.map(({ bend }) => `${plan.bends[bend]!.ref}.light`),
  ];
}

const regionNames = (plan: Plan): string[] => [
  ...numbered(plan.bends.map(({ ref }) => ref)).map((name) => `bend ${name}`),
  ...numbered(plan.limited.map(({ ref }) => ref)).map((name) => `limited ${name}`),
  ...plan.cores.map(({ ref }) => `core ${ref}`),
];

const record = <T>(names: readonly string[], values: ArrayLike<T>): Record<string, T> =>
  Object.fromEntries(names.map((name, index) => [name, values[index]!]));

export function takeSnapshot(
  plan: Plan,
  ticks: number,
  x: Float64Array,
  regions: Uint8Array,
  heat: HeatState,
  controllers: readonly ControlUnit[],
): Snapshot {
  return {
    ticks,
    states: record(stateNames(plan), x),
    regions: record(regionNames(plan), regions),
    heat: record(
      plan.heated.map(({ ref }) => ref),
      heat.amount,
    ),
    controllers: Object.fromEntries(controllers.map((unit) => [unit.ref, unit.save()])),
  };
}

/** States at the start, from a snapshot or from the parts; what a snapshot does not name starts at rest. */
export function startingStates(plan: Plan, start: 'discharged' | 'given' | Snapshot): Float64Array {
  const { states } = plan;
  const x = new Float64Array(states.count);
  x[states.one] = 1;
  if (states.sine >= 0) x[states.sine + 1] = 1;
  if (start === 'discharged') return x;
  if (start === 'given') {
    plan.charges.forEach(({ initialV }, index) => {
      x[index] = initialV;
    });
    plan.cores.forEach(({ magnetisingH, initialA }, index) => {
      if (initialA !== 0) x[states.flux[index]!] = magnetisingH * initialA;
    });
    return x;
  }
  stateNames(plan).forEach((name, index) => {
    x[index] = start.states[name] ?? 0;
  });
  return x;
}

export function startingRegions(plan: Plan, table: RegionTable, start: 'discharged' | 'given' | Snapshot): Uint8Array {
  const out = restingRegions(table);
  if (typeof start === 'string') return out;
  regionNames(plan).forEach((name, index) => {
    const known = start.regions[name];
    if (known !== undefined && known < (table.bends[index]?.length ?? Number.POSITIVE_INFINITY)) out[index] = known;
  });
  return out;
}
