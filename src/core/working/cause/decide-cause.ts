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
  'secondaryDrop',
  'feedback',
  'outputCapacitor',
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
  /** Read at the end of a cable, and nobody read at the socket. */
  readonly onlyAtCableEnd: boolean;
  readonly offersLess: boolean | null;
  readonly idleOutside: boolean;
  /** The feedback parts set another voltage than the window holds; null where no set point was worked out. */
  readonly setOutside: boolean | null;
  /** Share of the way from the idle voltage to the edge of the window that is gone at half the current held: a half for a straight line, nothing before a wall. */
  readonly sag: number | null;
  /** Resistance of the secondary, hot, over the slope of the output. */
  readonly copperShare: number | null;
  /** The output rectifier is the hottest of the parts read together; null where it was not read beside others. */
  readonly rectifierHottest: boolean | null;
  /** Least measured share of what is marked on the capacitors at the output. */
  readonly capacitorShare: number | null;
}

const AGREES = 0.1; // a deciding number agrees within a tenth
const FLAT = 0.05; // knees within a twentieth are the same knee
const STEEP = 0.9; // share of the square of the mains by which a knee that hangs on the rail must move
const FOLDED = 0.9;
const STEADY_HOT = 0.95;
const SATURATES_T = 0.35;
const CLEAR_OF_SATURATION_T = 0.3;
const BETTER_HOT = 1.03; // a dried-out capacitor gets better with warmth
const STRAIGHT = 0.35; // of the way gone at half the current: a line and no wall
const WALL = 0.2;
const COPPER_EXPLAINS = 0.7; // a slope agrees within 30 %
const COPPER_IS_LITTLE = 0.3;
const TIRED = 0.8; // share of its marking below which a capacitor is worn
const WALLS: readonly string[] = ['constantCurrent', 'constantPower', 'foldback', 'hiccup', 'latchOff'];

const near = (ratio: number): boolean => Math.abs(ratio - 1) <= AGREES;

/** The decision table of the bench: what each deciding number says of its cause. */
function standingOf(cause: Cause, e: Evidence): Standing {
  const flat = e.other !== null && Math.abs(e.other.ratio - 1) <= FLAT;
  // how the knee moved from this mains to the other, against the square of the voltages
  const followsRail = e.other !== null && followsSquare(e.other.ratio, e.other.mains / e.atMains);
  switch (cause) {
    case 'cable':
      return e.socketHolds === true ? 'shown' : e.onlyAtCableEnd ? 'open' : 'excluded';
    case 'negotiation':
      return e.offersLess === true ? 'shown' : 'excluded';
    case 'setPoint':
      return e.idleOutside ? 'shown' : e.setOutside === true ? 'agrees' : 'excluded';
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
    case 'secondaryDrop':
      if (!sagsStraight(e) || (e.copperShare !== null && e.copperShare < COPPER_IS_LITTLE && e.rectifierHottest === false))
        return 'excluded';
      return (e.copperShare !== null && e.copperShare >= COPPER_EXPLAINS) || e.rectifierHottest === true ? 'agrees' : 'open';
    case 'feedback':
      // a loop that lets go while the primary could pass more: nothing else is at its limit, and the copper does not explain the slope
      if (!sagsStraight(e) || (e.corePowerShare !== null && e.corePowerShare <= 1 + AGREES)) return 'excluded';
      if (e.copperShare !== null && e.copperShare >= COPPER_EXPLAINS) return 'excluded';
      return e.corePowerShare !== null && e.copperShare !== null ? 'agrees' : 'open';
    case 'outputCapacitor':
      if (e.capacitorShare === null || e.capacitorShare >= TIRED) return 'excluded';
      return e.hotOverCold !== null && e.hotOverCold > BETTER_HOT ? 'shown' : 'agrees';
  }
}

/** The voltage sinks with the load from the start, the same at every mains, without a wall behind it. */
function sagsStraight({ sag, limitKind, other }: Evidence): boolean {
  if (other !== null && Math.abs(other.ratio - 1) > FLAT) return false;
  return sag !== null && sag >= (limitKind === null ? STRAIGHT : WALL) && (limitKind === null || !WALLS.includes(limitKind));
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
  secondaryDrop: ['feedback'],
  feedback: ['secondaryDrop'],
  outputCapacitor: ['bulkValley'],
};

/** Names a cause, or lists what is left. */
export function decideCause(evidence: Evidence): Verdict {
  const standing = new Map(CAUSES.map((cause) => [cause, standingOf(cause, evidence)]));
  const speaking = CAUSES.filter((cause) => standing.get(cause) === 'shown' || standing.get(cause) === 'agrees');
  const [only] = speaking;
  const gate = speaking.find((cause) => NEXT[cause].length === 0);
  if (gate !== undefined) return { named: gate, how: standing.get(gate) === 'shown' ? 'shown' : 'consistent' };
  if (only !== undefined && speaking.length === 1 && NEXT[only].every((rival) => standing.get(rival) === 'excluded'))
    return { named: only, how: standing.get(only) === 'shown' ? 'shown' : 'consistent' };
  return { named: null, possible: [...speaking, ...CAUSES.filter((cause) => standing.get(cause) === 'open')] };
}
