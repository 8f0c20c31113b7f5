import type { Plan, StoredCharge } from './plan.ts';
import { type BendRegion, LIMITED, type RegionTable } from './regions.ts';

/** Something that happens when sign · row + offset rises above zero (and the second row too, where there is one). */
export interface Watch {
  readonly row: number;
  readonly sign: 1 | -1;
  readonly offset: number;
  readonly also?: { readonly row: number; readonly sign: 1 | -1; readonly offset: number };
  /** Place in the list of regions, and the region that begins; for a controller's watch its own number. */
  readonly device: number;
  readonly to: number;
}

/** Where the value of each watched row stands. */
export interface RowLayout {
  readonly bend: readonly number[];
  /** Drive; then the ceiling; then what the drive is above the ceiling. */
  readonly limited: readonly number[];
  readonly core: readonly number[];
  readonly stored: readonly number[];
  readonly senses: number;
  readonly count: number;
}

/** `wanted`: bends whose voltage somebody looks at whatever their curve. */
export function layRows(plan: Plan, table: RegionTable, senses: number, wanted: readonly number[]): RowLayout {
  let next = 0;
  const take = (rows: number): number => {
    next += rows;
    return next - rows;
  };
  const bends = table.bends.map((regions, index) => (wanted.includes(index) || regions.some(({ segment }) => segment > 0) ? take(1) : -1));
  const limited = plan.limited.map(() => take(3));
  const core = plan.cores.map(({ saturation }) => (saturation === null ? -1 : take(1)));
  const stored = plan.bends.map((bend) => (bend.stored === null ? -1 : take(1)));
  const first = take(senses);
  return { bend: bends, limited, core, stored, senses: first, count: next };
}

/** A base: off and breakdown by its voltage, what lies between the forward pieces by the charge. */
function baseWatches(
  regions: readonly BendRegion[],
  at: number,
  row: number,
  storedRow: number,
  { firstRegion, ohms }: StoredCharge,
  device: number,
): Watch[] {
  const { fromV, fromStored = 0 } = regions[at]!;
  if (at < firstRegion) return bendWatches(regions, at, row, device);
  const above = regions[at + 1]?.fromStored;
  const out: Watch[] = [];
  if (above !== undefined) out.push({ row: storedRow, sign: 1, offset: -above * ohms, device, to: at + 1 });
  // the junction conducts, backwards too, until the charge is gone
  if (at > firstRegion) out.push({ row: storedRow, sign: -1, offset: fromStored * ohms, device, to: at - 1 });
  else out.push({ row: storedRow, sign: -1, offset: 0, also: { row, sign: -1, offset: fromV }, device, to: at - 1 });
  return out;
}

function bendWatches(regions: readonly BendRegion[], at: number, row: number, device: number): Watch[] {
  const { fromV, toV, segment } = regions[at]!;
  const out: Watch[] = [];
  if (toV < Number.POSITIVE_INFINITY) out.push({ row, sign: 1, offset: -toV, device, to: at + 1 });
  if (segment > 0) out.push({ row, sign: -1, offset: fromV, device, to: at - 1 });
  return out;
}

function limitedWatches(region: number, drive: number, device: number): Watch[] {
  const ceiling = drive + 1;
  const difference = drive + 2;
  const above = (row: number, also?: Watch['also']): Omit<Watch, 'to'> => ({
    row,
    sign: 1,
    offset: 0,
    device,
    ...(also === undefined ? {} : { also }),
  });
  const below = (row: number): Omit<Watch, 'to'> => ({ row, sign: -1, offset: 0, device });
  if (region === LIMITED.off) return [{ ...above(drive, { row: ceiling, sign: 1, offset: 0 }), to: LIMITED.follows }];
  if (region === LIMITED.follows)
    return [
      { ...below(drive), to: LIMITED.off },
      { ...above(difference), to: LIMITED.saturated },
    ];
  return [
    { ...below(ceiling), to: LIMITED.off },
    { ...below(difference), to: LIMITED.follows },
  ];
}

/** What would end each region of a topology. */
export function watchesOf(plan: Plan, table: RegionTable, layout: RowLayout, regions: Uint8Array): Watch[] {
  const out: Watch[] = [];
  plan.bends.forEach(({ stored }, index) => {
    const row = layout.bend[index]!;
    if (row < 0) return;
    if (stored === null) out.push(...bendWatches(table.bends[index]!, regions[index]!, row, index));
    else out.push(...baseWatches(table.bends[index]!, regions[index]!, row, layout.stored[index]!, stored, index));
  });
  plan.limited.forEach((_, index) => {
    const device = table.limitedFrom + index;
    out.push(...limitedWatches(regions[device]!, layout.limited[index]!, device));
  });
  plan.cores.forEach((_, index) => {
    const row = layout.core[index]!;
    if (row < 0) return;
    const device = table.coresFrom + index;
    const region = regions[device]!;
    // the row is magnetising current over its limit
    if (region === 0) out.push({ row, sign: 1, offset: -1, device, to: 1 }, { row, sign: -1, offset: -1, device, to: 2 });
    else if (region === 1) out.push({ row, sign: -1, offset: 1, device, to: 0 });
    else out.push({ row, sign: 1, offset: 1, device, to: 0 });
  });
  return out;
}
