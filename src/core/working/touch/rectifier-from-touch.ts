import { derive } from '../../formula/derive.ts';
import { plugWayDifference } from '../../formula/touch/plug-way-difference.ts';
import type { Derived } from '../../trace/derived.ts';
import { uncertaintyOf } from '../../trace/leaf.ts';
import type { TouchReading } from './touch-facts.ts';

/**
 * What both plug ways say of the rectifier. Behind a bridge the bulk rails swing alike about both poles, so turning the plug changes nothing.
 * Behind a single diode one rail is one pole of the mains: what bridges the barrier is then fed in full or not at all.
 */
export interface RectifierHint {
  /** The conductor touched. */
  readonly from: string;
  /** oneConductor: a single diode, or a part that goes straight to one pole. symmetric: as behind a bridge. */
  readonly says: 'oneConductor' | 'symmetric' | 'cannotTell';
  readonly difference: Derived;
}

const CLEARLY = 2; // standard uncertainties
const ONE_WAY = 0.5; // behind a single diode the smaller current is strays only; half leaves room for them; house convention
const FINE_ENOUGH = 0.25; // share of the larger current below which a difference must be known to call the two alike; house convention

/** One hint for each conductor and kind of reading that was taken both ways; the greatest of several readings one way counts. */
export function rectifierFromTouch(readings: readonly TouchReading[]): RectifierHint[] {
  const counted = readings.filter(
    (reading): reading is TouchReading & { current: Derived } =>
      reading.current !== null && reading.current.side === undefined && reading.refused === null,
  );
  const keys = [...new Set(counted.map(keyOf))].sort();
  return keys.flatMap((key): RectifierHint[] => {
    const way = (orientation: 'A' | 'B'): Derived | null =>
      counted
        .filter((reading) => keyOf(reading) === key && reading.orientation === orientation)
        .reduce<Derived | null>((most, { current }) => (most === null || current.value > most.value ? current : most), null);
    const [one, other] = [way('A'), way('B')];
    if (one === null || other === null) return [];
    const from = key.slice(0, key.indexOf('|'));
    const difference = derive(plugWayDifference, { one, other }, `touch/${key.replace('|', '/')}/plug-way-difference`);
    return [{ from, difference, says: sayOf(one.value, other.value, difference) }];
  });
}

function sayOf(one: number, other: number, difference: Derived): RectifierHint['says'] {
  const u = uncertaintyOf(difference.form);
  const larger = Math.max(one, other);
  if (u === null || larger <= 0) return 'cannotTell';
  const apart = Math.abs(difference.value);
  if (apart > CLEARLY * u && Math.min(one, other) <= ONE_WAY * larger) return 'oneConductor';
  return apart <= CLEARLY * u && CLEARLY * u <= FINE_ENOUGH * larger ? 'symmetric' : 'cannotTell';
}

function keyOf({ id, peak }: TouchReading): string {
  return `${id.slice(0, id.lastIndexOf('~'))}|${peak ? 'peak' : 'rms'}`;
}
