import { derive } from '../../formula/derive.ts';
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
import { clearancePeak } from '../../table/iec-62368-1/2018/clearance-peak.ts';
import { clearanceWithstand } from '../../table/iec-62368-1/2018/clearance-withstand.ts';
import { findCell, lookUp } from '../../table/look-up.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';

export interface DistanceLimits {
  readonly basic: Derived;
  readonly reinforced: Derived;
  /** Other lines, shown and not deciding: what each is, and where it lies. */
  readonly others: readonly { readonly name: string; readonly at: Derived }[];
}

/**
 * Required clearance of a pair: the larger of procedure 1 (peak working voltage or temporary overvoltage, table 10) and procedure 2
 * (transients of the mains, table 14), times the factor for altitude. Null when the setting leaves the tables.
 */
export function clearanceLimits(setting: SettingFacts, pairId: string, peak: Derived | null, degree: string): DistanceLimits | null {
  const at = `insulation/${pairId}/clearance`;
  const impulse = lookUp(ratedImpulseVoltage, entered(setting), setting.overvoltageCategory.word, 'insulation/rated-impulse', 'V_imp', {
    category: setting.overvoltageCategory,
  });
  const factor = lookUp(altitudeTable, setting.altitude, 'factor', 'insulation/altitude-factor', 'k_a');
  if (impulse === null || factor === null) return null;
  const overvoltage = derive(temporaryOvervoltage, { mains: setting.nominal }, 'insulation/temporary-overvoltage');
  const greatest = peak === null ? overvoltage : derive(greatestPeak, { working: peak, overvoltage }, `${at}/greatest-peak`);
  const one = (prefix: 'B' | 'R', name: 'basic' | 'reinforced'): Derived | null => {
    const column = `${prefix}_PD${degree}`;
    const byPeakRaw = lookUp(clearancePeak, greatest, column, `${at}/${name}/by-peak`, 'd_1');
    const byTransient = lookUp(clearanceWithstand, impulse, column, `${at}/${name}/by-transient`, 'd_2');
    if (byPeakRaw === null || byTransient === null) return null;
    const byPeak = standsInTable(clearancePeak, greatest)
      ? byPeakRaw
      : derive(roundUpClearance, { distance: byPeakRaw }, `${at}/${name}/by-peak-rounded`);
    return derive(requiredClearance, { byPeak, byTransient, altitude: factor }, `${at}/${name}`);
  };
  const basic = one('B', 'basic');
  const reinforced = one('R', 'reinforced');
  return basic === null || reinforced === null ? null : { basic, reinforced, others: otherClearances(setting, impulse, peak, at, degree) };
}

const JAPANESE_V = 100;
const ROW_V = 150;
const SMALL_MAINS_PEAK_V = 210; // of mains to 150 V: above it the older standard adds from a column that was not found

/** Mains of 100 V are judged by the row of 150 V, though the row of 100 V would cover them. */
function entered(setting: SettingFacts): Derived {
  if (setting.nominal.value !== JAPANESE_V) return setting.nominal;
  return given('constant', ROW_V, 'V', {
    id: 'insulation/mains-row',
    name: 'setting-mains-row',
    symbol: 'U',
    source: cite('iec-62368-1', 'table 12, 100 V systems by the row of 150 V', 'memory'),
  });
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
