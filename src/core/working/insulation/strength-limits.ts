import { derive } from '../../formula/derive.ts';
import { crestOfTest } from '../../formula/insulation/crest-of-test.ts';
import { strengthVoltage } from '../../formula/insulation/strength-voltage.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { strength as household } from '../../table/iec-60335-1/2010/strength.ts';
import { ratedImpulseVoltage } from '../../table/iec-60664-1/2007/rated-impulse-voltage.ts';
import { strength as older } from '../../table/iec-60950-1/2005/strength.ts';
import { strengthOvervoltage } from '../../table/iec-62368-1/2018/strength-overvoltage.ts';
import { strengthPeak } from '../../table/iec-62368-1/2018/strength-peak.ts';
import { strengthTransient } from '../../table/iec-62368-1/2018/strength-transient.ts';
import { findCell, lookUp } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { enteredMains } from './clearance-limits.ts';

/** Test voltages (V, peak or d.c.) that a laboratory puts across an insulation, and those of other standards beside them. */
export interface StrengthLimits {
  readonly basic: Derived;
  readonly reinforced: Derived;
  readonly others: Readonly<Record<'basic' | 'reinforced', readonly { readonly name: string; readonly at: Derived }[]>>;
}

const OLDER_TO_V = 530; // peak working voltage at which a published report still takes the figure of the older edition

/** `peak` is the peak working voltage where somebody measured it; else the crest of the mains is the least it can be. Null outside the tables. */
export function strengthLimits(setting: SettingFacts, pairId: string, peak: Derived | null): StrengthLimits | null {
  const at = `insulation/${pairId}/strength`;
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
  if (impulse === null) return null;
  const working = peak ?? derive(peakOfMains, { rms: setting.nominal }, 'insulation/crest-of-mains');
  const one = (column: 'basic' | 'reinforced'): Derived | null => {
    const transient = lookUp(strengthTransient, impulse, column, `${at}/${column}/by-transient`, 'U_25');
    const byPeak = lookUp(strengthPeak, working, column, `${at}/${column}/by-peak`, 'U_26');
    const overvoltage = lookUp(strengthOvervoltage, setting.nominal, column, `${at}/${column}/by-overvoltage`, 'U_27');
    if (transient === null || byPeak === null || overvoltage === null) return null;
    return derive(strengthVoltage, { transient, peak: byPeak, overvoltage }, `${at}/${column}`);
  };
  const [basic, reinforced] = [one('basic'), one('reinforced')];
  if (basic === null || reinforced === null) return null;
  const crest = (name: string, rms: Derived | null): StrengthLimits['others']['basic'] =>
    rms === null ? [] : [{ name, at: derive(crestOfTest, { rms }, `${rms.step.id}/crest`) }];
  const others = (kind: 'basic' | 'reinforced'): StrengthLimits['others']['basic'] => [
    ...crest('householdStrength', lookUp(household, setting.nominal, kind, `insulation/household-strength-${kind}`, 'U')),
    ...(working.value <= OLDER_TO_V ? crest('olderStrength', findCell(older, kind, 'rms', `insulation/older-strength-${kind}`, 'U')) : []),
  ];
  return { basic, reinforced, others: { basic: others('basic'), reinforced: others('reinforced') } };
}
