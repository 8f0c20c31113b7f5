import type { Plan } from './plan.ts';
import type { Segment } from './segment-curve.ts';

/** Every part with more than one straight piece is in one region at a time; a topology is the list of all regions. */
export const LIMITED = { off: 0, follows: 1, saturated: 2 } as const;

export interface BendRegion extends Segment {
  readonly mode: number;
  readonly segment: number;
  /** Where the next segment begins; infinity for the last. */
  readonly toV: number;
}
export interface RegionTable {
  /** Regions of each bend, all modes one after the other. */
  readonly bends: readonly (readonly BendRegion[])[];
  /** Where each kind begins in the list. */
  readonly limitedFrom: number;
  readonly coresFrom: number;
  readonly count: number;
}

export function tableOfRegions(plan: Plan): RegionTable {
  const bends = plan.bends.map(({ modes }) =>
    modes.flatMap((curve, mode) =>
      curve.map((one, segment): BendRegion => ({ ...one, mode, segment, toV: curve[segment + 1]?.fromV ?? Number.POSITIVE_INFINITY })),
    ),
  );
  const limitedFrom = plan.bends.length;
  const coresFrom = limitedFrom + plan.limited.length;
  return { bends, limitedFrom, coresFrom, count: coresFrom + plan.cores.length };
}

/** The region of a bend in a given mode at a given voltage. */
export function regionAt(regions: readonly BendRegion[], mode: number, volts: number): number {
  return regions.findIndex((one) => one.mode === mode && volts < one.toV);
}

/** Bends at zero volts in their first mode, limited currents off, cores unsaturated. */
export function restingRegions(table: RegionTable): Uint8Array {
  const out = new Uint8Array(table.count);
  table.bends.forEach((regions, index) => {
    out[index] = regionAt(regions, 0, 0);
  });
  return out;
}

export const keyOf = (regions: Uint8Array): string => String.fromCharCode(...regions);
