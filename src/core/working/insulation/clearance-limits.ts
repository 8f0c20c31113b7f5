import { derive } from '../../formula/derive.ts';
import { distanceInDegree } from '../../formula/insulation/distance-in-degree.ts';
import { greaterDistance } from '../../formula/insulation/greater-distance.ts';
import { greatestPeak } from '../../formula/insulation/greatest-peak.ts';
import { olderClearance } from '../../formula/insulation/older-clearance.ts';
import { requiredClearance } from '../../formula/insulation/required-clearance.ts';
import { roundUpClearance } from '../../formula/insulation/round-up-clearance.ts';
import { temporaryOvervoltage } from '../../formula/insulation/temporary-overvoltage.ts';
import { cite } from '../../source/source.ts';
import type { PublishedTable } from '../../table/define-table.ts';
import { clearanceImpulse } from '../../table/iec-60664-1/2007/clearance-impulse.ts';
import { nextImpulse } from '../../table/iec-60664-1/2007/next-impulse.ts';
import { ratedImpulseVoltage } from '../../table/iec-60664-1/2007/rated-impulse-voltage.ts';
import { additionalClearance } from '../../table/iec-60950-1/2005/additional-clearance.ts';
import { clearance as olderByMains } from '../../table/iec-60950-1/2005/clearance.ts';
import { altitude as altitudeTable } from '../../table/iec-62368-1/2018/altitude.ts';
import { clearanceHighFrequency } from '../../table/iec-62368-1/2018/clearance-high-frequency.ts';
import { clearancePeak } from '../../table/iec-62368-1/2018/clearance-peak.ts';
import { clearanceWithstand } from '../../table/iec-62368-1/2018/clearance-withstand.ts';
import { highFrequencyDegree } from '../../table/iec-62368-1/2018/high-frequency-degree.ts';
import { withstandTest } from '../../table/iec-62368-1/2018/withstand-test.ts';
import { findCell, getCell, lookUp } from '../../table/look-up.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';

export interface DistanceLimits {
  readonly basic: Derived;
  readonly reinforced: Derived;
  /** Other lines, shown and not deciding: what each is, and where it lies. */
  readonly others: readonly { readonly name: string; readonly at: Derived }[];
  /** Of clearances: impulses (V peak) that a laboratory may put across a shorter gap instead, at sea level. */
  readonly test?: { readonly basic: Derived | null; readonly reinforced: Derived | null };
}

/**
 * Required clearance of a pair: the larger of procedure 1 (peak working voltage or temporary overvoltage, table 10) and procedure 2
 * (transients of the mains, table 14), times the factor for altitude. A peak above 30 kHz has a table of its own, which is added to procedure 1.
 * Null when the setting leaves the tables.
 */
export function clearanceLimits(
  setting: SettingFacts,
  pairId: string,
  peak: Derived | null,
  degree: string,
  fastPeak: Derived | null = null,
): DistanceLimits | null {
  const at = `insulation/${pairId}/clearance`;
  const impulse = lookUp(
    ratedImpulseVoltage,
    enteredMains(setting),
    setting.overvoltageCategory.word,
    'insulation/rated-impulse',
    'V_imp',
    {
      category: setting.overvoltageCategory,
    },
  );
  const factor = lookUp(altitudeTable, setting.altitude, 'factor', 'insulation/altitude-factor', 'k_a');
  if (impulse === null || factor === null) return null;
  const overvoltage = derive(temporaryOvervoltage, { mains: setting.nominal }, 'insulation/temporary-overvoltage');
  const greatest = peak === null ? overvoltage : derive(greatestPeak, { working: peak, overvoltage }, `${at}/greatest-peak`);
  const one = (prefix: 'B' | 'R', name: 'basic' | 'reinforced'): Derived | null => {
    const column = `${prefix}_PD${degree}`;
    const byPeakRaw = lookUp(clearancePeak, greatest, column, `${at}/${name}/by-peak`, 'd_1');
    const byTransient = lookUp(clearanceWithstand, impulse, column, `${at}/${name}/by-transient`, 'd_2');
    if (byPeakRaw === null || byTransient === null) return null;
    const slow = standsInTable(clearancePeak, greatest)
      ? byPeakRaw
      : derive(roundUpClearance, { distance: byPeakRaw }, `${at}/${name}/by-peak-rounded`);
    const fast = fastPeak === null ? undefined : clearanceAboveMains(fastPeak, name, degree, `${at}/${name}`);
    if (fast === null) return null;
    const byPeak = fast === undefined ? slow : derive(greaterDistance, { low: slow, high: fast }, `${at}/${name}/by-peak-of-both`);
    return derive(requiredClearance, { byPeak, byTransient, altitude: factor }, `${at}/${name}`);
  };
  const basic = one('B', 'basic');
  const reinforced = one('R', 'reinforced');
  if (basic === null || reinforced === null) return null;
  return { basic, reinforced, others: otherClearances(setting, impulse, peak, at, degree), test: testInstead(impulse, at) };
}

/** Table 11 with its factor for the pollution degree; null beyond it. */
function clearanceAboveMains(peak: Derived, name: 'basic' | 'reinforced', degree: string, at: string): Derived | null {
  const raw = lookUp(clearanceHighFrequency, peak, name, `${at}/by-fast-peak`, 'd_11');
  if (raw === null) return null;
  const factor = getCell(highFrequencyDegree, degree, 'factor', 'insulation/fast-degree', 'k');
  const inDegree = derive(distanceInDegree, { distance: raw, factor }, `${at}/by-fast-peak-in-degree`);
  return standsInTable(clearanceHighFrequency, peak)
    ? inDegree
    : derive(roundUpClearance, { distance: inDegree }, `${at}/by-fast-peak-rounded`);
}

const JAPANESE_V = 100;
const ROW_V = 150;
const SMALL_MAINS_PEAK_V = 210; // of mains to 150 V: above it the older standard adds from a column that was not found

/** Mains of 100 V are judged by the row of 150 V, though the row of 100 V would cover them. */
export function enteredMains(setting: SettingFacts): Derived {
  if (setting.nominal.value !== JAPANESE_V) return setting.nominal;
  return given('constant', ROW_V, 'V', {
    id: 'insulation/mains-row',
    name: 'setting-mains-row',
    symbol: 'U',
    source: cite('iec-62368-1', 'table 12, 100 V systems by the row of 150 V', 'memory'),
  });
}

/** The impulse test for the rated impulse, and for reinforced insulation for the next one. */
function testInstead(impulse: Derived, at: string): NonNullable<DistanceLimits['test']> {
  const next = findCell(nextImpulse, impulse.value, 'next', `${at}/next-impulse`, 'V_next');
  return {
    basic: lookUp(withstandTest, impulse, 'test', `${at}/test-basic`, 'U_t'),
    reinforced: next === null ? null : lookUp(withstandTest, next, 'test', `${at}/test-reinforced`, 'U_t'),
  };
}

/** A row that stands in the table is taken as it stands; only interpolated values are rounded. */
function standsInTable(table: PublishedTable, key: Derived): boolean {
  return key.alternatives.length === 0 && table.rows.some(([own]) => own === key.value) && key.form.size === 0;
}

function otherClearances(
  setting: SettingFacts,
  impulse: Derived,
  peak: Derived | null,
  at: string,
  degree: string,
): DistanceLimits['others'] {
  const others: { name: string; at: Derived }[] = [];
  const basic = lookUp(clearanceImpulse, impulse, `PD${degree}`, `${at}/insulation-coordination-basic`, 'd');
  if (basic !== null) others.push({ name: 'coordinationBasic', at: basic });
  const next = findCell(nextImpulse, impulse.value, 'next', `${at}/next-impulse`, 'V_next');
  const coordination = next === null ? null : lookUp(clearanceImpulse, next, `PD${degree}`, `${at}/insulation-coordination`, 'd');
  if (coordination !== null) others.push({ name: 'coordinationReinforced', at: coordination });
  const older = olderReinforced(setting, peak, at);
  if (older !== null) others.push({ name: 'olderReinforced', at: older });
  return others;
}

/** The older edition's line; where the peak leaves its tables there is none. A peak that nobody measured counts as that of the mains. */
function olderReinforced(setting: SettingFacts, peak: Derived | null, at: string): Derived | null {
  const byMains = lookUp(olderByMains, setting.nominal, 'reinforced', `${at}/older-standard`, 'd');
  if (byMains === null || peak === null) return byMains;
  if (setting.nominal.value <= ROW_V) return peak.value > SMALL_MAINS_PEAK_V ? null : byMains;
  const more = lookUp(additionalClearance, peak, 'reinforced', `${at}/older-standard-more`, 'd_+');
  return more === null ? null : derive(olderClearance, { byMains, more }, `${at}/older-standard-whole`);
}
