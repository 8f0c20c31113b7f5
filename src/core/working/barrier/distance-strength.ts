import { derive } from '../../formula/derive.ts';
import { layersOfDistance } from '../../formula/insulation/layers-of-distance.ts';
import { leastSlotWidth } from '../../formula/insulation/least-slot-width.ts';
import { grooveWidth } from '../../table/iec-60664-1/2007/groove-width.ts';
import { getCell } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { exhibitsOf } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { clearanceLimits, type DistanceLimits } from '../insulation/clearance-limits.ts';
import { creepageLimits } from '../insulation/creepage-limits.ts';
import type { DistanceReading, MaterialGroup, PairFacts } from '../insulation/pair-facts.ts';
import { peakVoltageOf, workingVoltageOf } from '../insulation/working-voltage-of.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { bandOf, fixed, open, type Strength } from './strength.ts';

/** Limits by which the pieces of a way over floating conductors are judged: those of mains against a hand. */
export interface HandPair {
  readonly pair: PairFacts;
  readonly measured: boolean;
}

const ANY_PAIR: PairFacts = {
  id: 'mains~hand',
  about: 'mains to what can be touched',
  ends: ['mains', 'hand'],
  insulation: 'reinforced',
  betweenMains: false,
  surface: [],
  air: [],
};

/** The pair of mains and touchable conductors with the greatest measured working voltage; without any the estimate stands. */
export function handPair(bench: Bench, setting: SettingFacts): HandPair {
  const side = (id: string): string | null => findRead(bench.conductors.get(id)?.side);
  const measured = exhibitsOf(bench, 'workingVoltage').flatMap((exhibit) => {
    const [a, b] = exhibit.between;
    const across = [side(a), side(b)];
    if (!across.includes('mains') || !(across.includes('output') || across.includes('touchable'))) return [];
    const pair: PairFacts = { ...ANY_PAIR, ends: [a, b] };
    const working = workingVoltageOf(bench, setting, pair);
    return working.measured ? [{ pair, rms: working.rms.value }] : [];
  });
  const greatest = measured.toSorted((a, b) => b.rms - a.rms)[0];
  return greatest === undefined ? { pair: ANY_PAIR, measured: false } : { pair: greatest.pair, measured: true };
}

/** Distances asked for at one place; null where the tables do not reach. */
export function limitsOf(
  bench: Bench,
  setting: SettingFacts,
  pair: PairFacts,
  path: 'air' | 'surface',
  { group, dirty }: { group: MaterialGroup; dirty: boolean },
): DistanceLimits | null {
  const degree = dirty ? '3' : setting.pollutionDegree.word;
  const key = `${pair.id}${path === 'air' || group === 'III' ? '' : `/group-${group.toLowerCase()}`}${dirty ? '/dirty' : ''}`;
  const clearance = clearanceLimits(setting, key, peakVoltageOf(bench, setting, pair), degree);
  if (clearance === null || path === 'air') return clearance;
  return creepageLimits(key, workingVoltageOf(bench, setting, pair).rms, group, degree, clearance);
}

/** What one recorded distance stands for. A piece of a way over a floating conductor counts only if it is no shorter than a groove that counts. */
export function strengthOfReading(
  bench: Bench,
  setting: SettingFacts,
  pair: PairFacts,
  limitPair: PairFacts,
  path: 'air' | 'surface',
  reading: DistanceReading,
): Strength {
  const fields = [reading.field];
  if (reading.opened.state === 'absent') return fixed(0, 0, { fields });
  if (reading.distance === null) return open({ fields, notLooked: reading.opened.state !== 'unknown' && reading.opened.state !== 'read' });
  if (reading.group === null) return open({ fields, notes: [{ key: 'tracksTooEasily', args: {} }] });
  const limits = limitsOf(bench, setting, limitPair, path, { group: reading.group, dirty: reading.dirty });
  if (limits === null) return open({ fields });
  const degree = reading.dirty ? '3' : setting.pollutionDegree.word;
  const piece = pair.insulation === 'floating';
  const of = (distance: Derived, which: string): Strength =>
    strengthOfDistance(distance, limits, `barrier/${pair.id}/${path}/${reading.exhibit.id}${which}`, { degree, piece, setting, fields });
  const { slot, distance } = reading;
  if (slot === null || path === 'air') return of(distance, '');
  const printed = getCell(grooveWidth, degree, 'X', `insulation/groove-width/degree-${degree}`, 'X');
  const airLimits = limitsOf(bench, setting, limitPair, 'air', { group: reading.group, dirty: reading.dirty });
  const width =
    airLimits === null ? printed : derive(leastSlotWidth, { printed, clearance: airLimits.reinforced }, `barrier/${pair.id}/slot`);
  const band = slot.width === null ? null : bandOf(slot.width, setting.decision.passAt);
  const along = of(distance, '');
  if (band !== null && band.low >= width.value) return along;
  const straight = slot.straight === null ? null : of(slot.straight, '/straight');
  if (straight !== null && band !== null && band.high < width.value) return { ...straight, notes: [{ key: 'slotBridged', args: {} }] };
  return { ...along, low: straight?.low ?? 0, layers: straight?.layers ?? null, notes: [{ key: 'slotWidthUndecided', args: {} }] };
}

/** A distance against its two limits, in layers. */
export function strengthOfDistance(
  distance: Derived,
  limits: DistanceLimits,
  id: string,
  { degree, piece, setting, fields }: { degree: string; piece: boolean; setting: SettingFacts; fields: readonly string[] },
): Strength {
  const layers = derive(layersOfDistance, { distance, basic: limits.basic, reinforced: limits.reinforced }, id);
  const band = bandOf(layers, setting.decision.passAt);
  if (!piece) return fixed(band.low, band.high, { layers, fields });
  const least = getCell(grooveWidth, degree, 'X', `insulation/groove-width/degree-${degree}`, 'X').value;
  const own = bandOf(distance, setting.decision.passAt);
  if (own.high < least) return fixed(0, 0, { fields, notes: [{ key: 'pieceTooShort', args: { distance: distance.value, least } }] });
  if (own.low < least)
    return fixed(0, band.high, { layers, fields, notes: [{ key: 'pieceDoubtful', args: { distance: distance.value, least } }] });
  return fixed(band.low, band.high, { layers, fields });
}
