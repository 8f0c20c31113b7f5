import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, findCondition } from '../bench/conditions-of.ts';
import { heldCurrent } from '../load/held-current.ts';
import { kindOfLimit } from '../load/kind-of-limit.ts';
import type { Sweep } from '../load/read-sweep.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { Capability, TransformerFacts } from '../transformer/transformer-facts.ts';

/** Why a claim is missed, as far as a bench can tell; in the order in which they are asked. */
export const CAUSES = [
  'cable',
  'negotiation',
  'setPoint',
  'bulkValley',
  'powerLimit',
  'setCurrent',
  'saturation',
  'thermalFoldback',
] as const;
export type Cause = (typeof CAUSES)[number];

/** A cause is named only where its own number agrees and the next one is excluded; shown by a measurement, or consistent with a calculation. */
export type Verdict =
  | { readonly named: Cause; readonly how: 'shown' | 'consistent' }
  | { readonly named: null; readonly possible: readonly Cause[] };

type Standing = 'shown' | 'agrees' | 'excluded' | 'open';

/** What is held against each candidate at one mains voltage. */
export interface Evidence {
  readonly atMains: number;
  /** Current held over that at the nearest other mains, with both voltages; null where nobody swept there. */
  readonly other: { readonly mains: number; readonly ratio: number } | null;
  /** Hot over cold at the same mains. */
  readonly hotOverCold: number | null;
  readonly limitKind: string | null;
  /** Power into the core by its formulas over the power that went into the unit at the knee. */
  readonly corePowerShare: number | null;
  readonly cut: boolean | null;
  readonly heldShare: number | null;
  readonly flux: number | null;
  readonly socketHolds: boolean | null;
  readonly offersLess: boolean | null;
  readonly idleOutside: boolean;
}

const AGREES = 0.1; // a deciding number agrees within a tenth
const FLAT = 0.05; // knees within a twentieth are the same knee
const STEEP = 0.9; // share of the square of the mains by which a knee that hangs on the rail must move
const FOLDED = 0.9;
const STEADY_HOT = 0.95;
const SATURATES_T = 0.35;
const CLEAR_OF_SATURATION_T = 0.3;

const near = (ratio: number): boolean => Math.abs(ratio - 1) <= AGREES;

/** The decision table of the bench: what each deciding number says of its cause. */
function standingOf(cause: Cause, e: Evidence): Standing {
  const flat = e.other !== null && Math.abs(e.other.ratio - 1) <= FLAT;
  // how the knee moved from this mains to the other, against the square of the voltages
  const followsRail = e.other !== null && followsSquare(e.other.ratio, e.other.mains / e.atMains);
  switch (cause) {
    case 'cable':
      return e.socketHolds === null ? 'excluded' : e.socketHolds ? 'shown' : 'excluded';
    case 'negotiation':
      return e.offersLess === true ? 'shown' : 'excluded';
    case 'setPoint':
      return e.idleOutside ? 'shown' : 'excluded';
    case 'bulkValley':
      if (flat || e.cut === false) return 'excluded';
      if (e.cut === true && e.corePowerShare !== null) return near(e.corePowerShare) ? (followsRail ? 'shown' : 'agrees') : 'open';
      return followsRail ? 'shown' : 'open';
    case 'powerLimit':
      if (e.cut === true || followsRail) return 'excluded';
      if (e.corePowerShare === null) return 'open';
      return near(e.corePowerShare) ? (flat ? 'shown' : 'agrees') : 'excluded';
    case 'setCurrent':
      if (e.limitKind !== null && e.limitKind !== 'constantCurrent') return 'excluded';
      if (e.heldShare !== null) return near(e.heldShare) ? (flat ? 'shown' : 'agrees') : 'excluded';
      return 'open';
    case 'saturation':
      if (e.flux === null) return 'open';
      return e.flux > SATURATES_T ? 'agrees' : e.flux <= CLEAR_OF_SATURATION_T ? 'excluded' : 'open';
    case 'thermalFoldback':
      if (e.hotOverCold === null) return 'open';
      return e.hotOverCold < FOLDED ? 'agrees' : e.hotOverCold >= STEADY_HOT ? 'excluded' : 'open';
  }
}

function followsSquare(ratio: number, voltages: number): boolean {
  return voltages > 1 ? ratio >= STEEP * voltages * voltages : ratio <= (voltages * voltages) / STEEP;
}

/** The candidate that is most easily taken for a cause, and must be excluded before it is named. */
const NEXT: Readonly<Record<Cause, readonly Cause[]>> = {
  cable: [],
  negotiation: [],
  setPoint: [],
  bulkValley: ['powerLimit'],
  powerLimit: ['bulkValley'],
  setCurrent: ['powerLimit'],
  saturation: ['thermalFoldback'],
  thermalFoldback: ['saturation'],
};

/** Names a cause, or lists what is left. */
export function decideCause(evidence: Evidence): Verdict {
  const standing = new Map(CAUSES.map((cause) => [cause, standingOf(cause, evidence)]));
  const speaking = CAUSES.filter((cause) => standing.get(cause) === 'shown' || standing.get(cause) === 'agrees');
  const [only] = speaking;
  const gate = speaking.find((cause) => NEXT[cause].length === 0);
  if (gate !== undefined) return { named: gate, how: 'shown' };
  if (only !== undefined && speaking.length === 1 && NEXT[only].every((rival) => standing.get(rival) === 'excluded'))
    return { named: only, how: standing.get(only) === 'shown' ? 'shown' : 'consistent' };
  return { named: null, possible: [...speaking, ...CAUSES.filter((cause) => standing.get(cause) === 'open')] };
}

/** Gathers what is known about one sweep that misses its claim. */
export function evidenceFor(
  bench: Bench,
  level: LevelFacts,
  sweep: Sweep,
  transformers: readonly TransformerFacts[],
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
    offersLess: offersLess(bench, level),
    idleOutside: first !== null && (first < window.least.value || first > window.most.value),
  };
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
