import type { SegmentCurve } from './segment-curve.ts';

/** The circuit as equations see it: numbered nodes and a few kinds of branch. Node -1 is earth. One part may become several branches. */
export interface Between {
  readonly ref: string;
  readonly a: number;
  readonly b: number;
}
export interface Conductance extends Between {
  readonly siemens: number;
}
export interface Charge extends Between {
  readonly farads: number;
  readonly ohms: number;
  readonly initialV: number;
  readonly ratedV: number | null;
}
export interface Source extends Between {
  readonly ohms: number;
  /** Volts = constant + sine sin(wt) + cosine cos(wt). */
  readonly constant: number;
  readonly sine: number;
  readonly cosine: number;
}
export interface CoreWinding {
  readonly name: string;
  readonly a: number;
  readonly b: number;
  /** Turns over those of the first winding. */
  readonly ratio: number;
  readonly leakageH: number;
  readonly ohms: number;
}
/** Windings on one core; an inductor is one with a single winding. */
export interface Core {
  readonly ref: string;
  readonly magnetisingH: number;
  readonly windings: readonly CoreWinding[];
  readonly saturation: { readonly amps: number; readonly share: number } | null;
  readonly initialA: number;
}
export interface StoredCharge {
  readonly transitS: number;
  readonly gain: number;
  /** The first region of the bend in which charge is stored; each further one belongs to a larger charge. */
  readonly firstRegion: number;
  /** By how many volts an ampere of it counts when it is held against a limit. */
  readonly ohms: number;
}
/** A two-pole with straight segments, in one of several modes (switch off and on, fuse whole and blown). */
export interface Bend extends Between {
  readonly modes: readonly SegmentCurve[];
  /** Stored base charge, as the collector current it can carry: it keeps the last segment conducting until it is gone. */
  readonly stored: StoredCharge | null;
}
/** A current that follows its drive, between zero and what saturation allows: i = max(0, min(drive, (v - zeroV) / ohms)). */
export interface Limited extends Between {
  readonly zeroV: number;
  readonly ohms: number;
  readonly drive:
    | { readonly by: 'voltage'; readonly plus: number; readonly minus: number; readonly siemens: number; readonly fromV: number }
    | { readonly by: 'stored'; readonly bend: number }
    | { readonly by: 'light'; readonly light: number };
}
/** Photocurrent behind one pole: straight in the voltage of its diode, segment by segment. */
export interface Light {
  readonly bend: number;
  /** One line per segment of the diode's curve. */
  readonly lines: readonly { readonly siemens: number; readonly amps0: number }[];
  readonly perSecond: number;
}
/** Heat of a fuse or thermistor; what it does to the mode of its bend. */
export interface Heated {
  readonly ref: string;
  readonly bend: number;
  readonly law:
    | { readonly kind: 'melts'; readonly meltingA2s: number; readonly holdingA: number }
    | {
        readonly kind: 'falls';
        readonly riseK: readonly number[];
        readonly ohms: readonly number[];
        readonly heatJPerK: number;
        readonly lossWPerK: number;
      };
}
/** A voltage, or a sum of voltages, that somebody looks at: sum of factor (plus - minus), plus a constant. */
export interface Sense {
  readonly terms: readonly { readonly factor: number; readonly plus: number; readonly minus: number }[];
  readonly constant: number;
}

export interface Plan {
  /** Net names to node numbers. */
  readonly nodeOf: ReadonlyMap<string, number>;
  readonly nodes: number;
  /** Which island of connected branches a node belongs to; earth is island 0. */
  readonly islandOf: readonly number[];
  readonly conductances: readonly Conductance[];
  readonly charges: readonly Charge[];
  readonly sources: readonly Source[];
  readonly cores: readonly Core[];
  readonly bends: readonly Bend[];
  readonly limited: readonly Limited[];
  readonly lights: readonly Light[];
  readonly heated: readonly Heated[];
  readonly radPerSecond: number;
  readonly states: StateLayout;
}

/** Order of the states: capacitor voltages, fluxes, stored charges, lights; then what needs no equation: 1, sin, cos. */
export interface StateLayout {
  readonly flux: readonly number[]; // first flux of each core
  readonly stored: readonly number[]; // per bend, -1 without
  readonly light: number;
  readonly moving: number;
  readonly one: number;
  readonly sine: number;
  readonly count: number;
}

export function layStates(plan: Omit<Plan, 'states' | 'islandOf'>): StateLayout {
  let next = plan.charges.length;
  const flux = plan.cores.map(({ windings }) => {
    const first = next;
    next += windings.length;
    return first;
  });
  const stored = plan.bends.map((bend) => {
    if (bend.stored === null) return -1;
    next += 1;
    return next - 1;
  });
  const light = next;
  const moving = light + plan.lights.length;
  const one = moving;
  const turning = plan.radPerSecond > 0;
  return { flux, stored, light, moving, one, sine: turning ? one + 1 : -1, count: one + (turning ? 3 : 1) };
}
