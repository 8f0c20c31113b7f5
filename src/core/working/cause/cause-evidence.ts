import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, findCondition } from '../bench/conditions-of.ts';
import { findRead } from '../bench/open-value.ts';
import { markedValue, measuredValue } from '../board/part-quantity.ts';
import type { SpotReading } from '../heat/spot-facts.ts';
import { heldCurrent } from '../load/held-current.ts';
import { kindOfLimit } from '../load/kind-of-limit.ts';
import { outputResistance } from '../load/output-resistance.ts';
import type { Sweep } from '../load/read-sweep.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { Capability } from '../transformer/capability.ts';
import type { TransformerFacts } from '../transformer/transformer-facts.ts';

import type { Evidence } from './decide-cause.ts';

const AGREES = 0.1; // voltages of the mains further apart than a tenth are two voltages
const FLAT = 0.05; // within a twentieth they are one

/** What else is known of the unit besides its sweeps. */
export interface Unit {
  readonly bench: Bench;
  readonly transformers: readonly TransformerFacts[];
  readonly spots: readonly SpotReading[];
  /** Voltage that the feedback parts set for the level; null where it was not worked out. */
  readonly setPoint: Derived | null;
}

/** Gathers what is known about one sweep that misses its claim. */
export function evidenceFor(
  { bench, transformers, spots, setPoint }: Unit,
  level: LevelFacts,
  sweep: Sweep,
  capabilityAt: (facts: TransformerFacts, sweep: Sweep) => Pick<Capability, 'power' | 'point'> | null,
): Evidence | null {
  const { window, claim } = level;
  const mains = sweep.mains?.value ?? null;
  const held = window === null ? null : heldCurrent(sweep, window);
  if (window === null || claim === null || mains === null || held === null || held.value <= 0) return null;
  const alike = (other: Sweep): boolean =>
    other !== sweep && other.exhibit.sense === sweep.exhibit.sense && startOf(bench, other) === startOf(bench, sweep);
  const others = level.sweeps
    .filter((other) => alike(other) && other.mains !== null && Math.abs(other.mains.value / mains - 1) > AGREES)
    .flatMap((other) => {
      const its = heldCurrent(other, window);
      return its === null || other.mains === null ? [] : [{ mains: other.mains.value, ratio: its.value / held.value }];
    })
    // a knee is compared with the next higher mains, where a rail that is too low would show
    .toSorted((a, b) => Number(a.mains < mains) - Number(b.mains < mains) || Math.abs(a.mains - mains) - Math.abs(b.mains - mains));
  const [transformer] = transformers;
  const capability = transformer === undefined ? null : capabilityAt(transformer, sweep);
  const knee = sweep.rising.filter(({ current }) => current.value <= held.value).at(-1);
  const input = knee?.inputPower?.value ?? null;
  const limit = kindOfLimit(sweep, window);
  const heldNumber = transformer?.numbers.find(({ key }) => key === 'heldCurrent')?.at.value ?? null;
  const first = sweep.rising[0]?.voltage.value ?? null;
  return {
    atMains: mains,
    other: others[0] ?? null,
    hotOverCold: hotOverCold(bench, level, sweep, held.value),
    limitKind: limit === null || limit === 'unknown' ? null : limit.kind,
    corePowerShare: capability === null || input === null || input <= 0 ? null : capability.power.value / input,
    cut: capability === null ? null : capability.point.cut,
    heldShare: heldNumber === null ? null : heldNumber / held.value,
    flux: transformer?.flux?.value ?? null,
    socketHolds: socketHolds(level, sweep, mains),
    onlyAtCableEnd: sweep.exhibit.sense === 'cableEnd' && !level.sweeps.some(({ exhibit }) => exhibit.sense === 'socket'),
    offersLess: offersLess(bench, level),
    idleOutside: first !== null && (first < window.least.value || first > window.most.value),
    setOutside: setPoint === null ? null : setPoint.value < window.least.value || setPoint.value > window.most.value,
    sag: sagOf(sweep, held.value, window.least.value),
    copperShare: copperShare(transformer, outputResistance(sweep, held)),
    rectifierHottest: rectifierHottest(bench, spots, transformer),
    capacitorShare: capacitorShare(bench),
  };
}

const HALF = 0.5;

/** Share of the way from the idle voltage to the edge of the window that is gone at half the current held. */
function sagOf({ rising }: Sweep, held: number, edge: number): number | null {
  const idle = rising[0];
  const middle = HALF * held;
  const after = rising.findIndex(({ current }) => current.value >= middle);
  const [low, high] = [rising[after - 1], rising[after]];
  if (idle === undefined || low === undefined || high === undefined || idle.voltage.value <= edge) return null;
  const part = (middle - low.current.value) / (high.current.value - low.current.value);
  const volts = low.voltage.value + part * (high.voltage.value - low.voltage.value);
  return (idle.voltage.value - volts) / (idle.voltage.value - edge);
}

function copperShare(transformer: TransformerFacts | undefined, slope: Derived | null): number | null {
  const secondary = transformer?.losses.find(({ winding }) => winding === transformer.turns.secondary)?.hot ?? null;
  return secondary === null || slope === null || slope.value <= 0 ? null : secondary.value / slope.value;
}

/** Whether the output rectifier is hotter than every other part that was read together with it. */
function rectifierHottest(bench: Bench, spots: readonly SpotReading[], transformer: TransformerFacts | undefined): boolean | null {
  const rectifier = transformer?.stack.exhibit.rectifierPart;
  if (rectifier === undefined || bench.parts.get(rectifier) === undefined) return null;
  const together = new Map<string, SpotReading[]>();
  for (const spot of spots) {
    if (spot.place.part === undefined || spot.temperature === null || spot.temperature.side !== undefined) continue;
    const exhibit = spot.field.split('/').slice(0, ROW_AT).join('/');
    together.set(exhibit, [...(together.get(exhibit) ?? []), spot]);
  }
  const told = [...together.values()].flatMap((readings) => {
    const own = readings.filter(({ place }) => place.part === rectifier).map(({ temperature }) => temperature!.value);
    const others = readings.filter(({ place }) => place.part !== rectifier).map(({ temperature }) => temperature!.value);
    return own.length === 0 || others.length === 0 ? [] : [Math.max(...own) > Math.max(...others)];
  });
  return told.length === 0 ? null : told.every((one) => one);
}

const ROW_AT = 3; // "/exhibits/spots-1/rows/...": readings of one exhibit were taken together

/** The worst of the electrolytic capacitors between conductors of the output. */
function capacitorShare(bench: Bench): number | null {
  const isOutput = (net: string | null): boolean => net !== null && findRead(bench.conductors.get(net)?.side) === 'output';
  const shares = bench.one.parts
    .filter((part) => findRead(part.kind) === 'electrolyticCapacitor' && (part.pins ?? []).length > 0)
    .filter((part) => (part.pins ?? []).every(({ net }) => isOutput(findRead(net))))
    .flatMap((part) => {
      const [measured, marked] = [
        measuredValue(bench, part, 'capacitance', 'capacitance', 'C').at,
        markedValue(part, 'capacitance', 'C').at,
      ];
      return measured === null || marked === null || marked.value <= 0 ? [] : [measured.value / marked.value];
    });
  return shares.length === 0 ? null : Math.min(...shares);
}

function startOf(bench: Bench, { exhibit }: Sweep): string | null {
  return findCondition(conditionsOf(bench, exhibit).start);
}

function hotOverCold(bench: Bench, level: LevelFacts, sweep: Sweep, held: number): number | null {
  if (level.window === null) return null;
  const own = startOf(bench, sweep);
  const twin = level.sweeps.find(
    (other) =>
      other.mains !== null &&
      sweep.mains !== null &&
      Math.abs(other.mains.value / sweep.mains.value - 1) <= FLAT &&
      startOf(bench, other) === (own === 'cold' ? 'hot' : 'cold'),
  );
  const its = twin === undefined ? null : heldCurrent(twin, level.window);
  if (its === null || own === null) return null;
  return own === 'cold' ? its.value / held : held / its.value;
}

/** At the end of a cable it falls short; at the socket, at the same mains, it holds. */
function socketHolds(level: LevelFacts, sweep: Sweep, mains: number): boolean | null {
  const { window, claim } = level;
  if (sweep.exhibit.sense !== 'cableEnd' || window === null || claim === null) return null;
  const socket = level.sweeps.find(
    (other) => other.exhibit.sense === 'socket' && other.mains !== null && Math.abs(other.mains.value / mains - 1) <= FLAT,
  );
  const held = socket === undefined ? null : heldCurrent(socket, window);
  return held === null ? null : held.value >= claim.value;
}

/** What it offers at this voltage is less than what is claimed; null where nobody listened. */
function offersLess(bench: Bench, level: LevelFacts): boolean | null {
  const { claim, window } = level;
  if (claim === null || window === null) return null;
  const amount = (text: string, kind: 'voltage' | 'current'): number | null => {
    const quantity = parseQuantity(text, kind);
    return isRefusal(quantity) ? null : quantity.value;
  };
  const offers = exhibitsOf(bench, 'advertised')
    .filter(({ struck, port }) => struck === undefined && port === level.port.id)
    .flatMap((exhibit) => exhibit.offers)
    .flatMap(({ voltage, current }) => {
      const volts = voltage === undefined ? null : amount(voltage, 'voltage');
      const amperes = amount(current, 'current');
      return volts === null || amperes === null || Math.abs(volts / window.nominal.value - 1) > FLAT ? [] : [amperes];
    });
  return offers.length === 0 ? null : Math.max(...offers) < claim.value * (1 - FLAT);
}
