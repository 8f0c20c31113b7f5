import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { workingVoltageEstimate } from '../../formula/insulation/working-voltage-estimate.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given, withNotes } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { openValue } from '../bench/open-value.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import type { PairFacts } from './pair-facts.ts';

const FACTOR = 1.15; // rms working voltage of a flyback over the mains, first estimate
const FACTOR_HALF_WIDTH = 0.05;

/** The rms working voltage of a pair: the greatest reading on a direct supply, else the mains itself between mains conductors, else an estimate. */
export function workingVoltageOf(bench: Bench, setting: SettingFacts, pair: PairFacts): { rms: Derived; measured: boolean } {
  const measured = measuredVoltage(bench, pair, 'rms');
  if (measured !== null) return { rms: measured, measured: true };
  if (pair.betweenMains || pair.insulation === 'basic') return { rms: setting.nominal, measured: false };
  const factor = given(
    'constant',
    FACTOR,
    '1',
    { id: 'insulation/working-voltage-factor', name: 'estimate-working-voltage', symbol: 'k', source: cite('house', 'working voltage over mains, 1.10 to 1.20', 'memory') },
    { form: doubtOf({ id: 'estimate/working-voltage', u: rectangular(FACTOR_HALF_WIDTH), means: 'estimatedWorkingVoltage' }) },
  );
  const rms = derive(workingVoltageEstimate, { factor, mains: setting.nominal }, 'insulation/working-voltage-estimated');
  return { rms: withNotes(rms, [{ key: 'estimated', args: {} }]), measured: false };
}

/** The greatest peak read for a pair, null when nobody measured it. */
export function peakVoltageOf(bench: Bench, pair: PairFacts): Derived | null {
  return measuredVoltage(bench, pair, 'peak');
}

function measuredVoltage(bench: Bench, pair: PairFacts, which: 'rms' | 'peak'): Derived | null {
  const found: Derived[] = [];
  for (const exhibit of exhibitsOf(bench, 'workingVoltage')) {
    if (exhibit.struck !== undefined || !joins(exhibit, pair)) continue;
    const opened = openValue(exhibit[which]);
    // behind an isolating or electronic source the output floats with the mains and the reading is near zero: never evidence
    const { supply } = { ...exhibit.under, ...(opened.state === 'read' ? opened.read.under : {}) };
    if (opened.state !== 'read' || findCondition(supply) !== 'direct') continue;
    const quantity = parseQuantity(opened.v, 'voltage');
    if (isRefusal(quantity)) continue;
    found.push(
      deriveReading(bench, quantity, { field: `/exhibits/${exhibit.id}/${which}`, role: 'scope', day: exhibit.day, instrument: opened.read.instrument, symbol: 'U_w' }),
    );
  }
  return found.sort((a, b) => b.value - a.value)[0] ?? null;
}

function joins(exhibit: ExhibitOf<'workingVoltage'>, pair: PairFacts): boolean {
  return exhibit.between.includes(pair.ends[0]) && exhibit.between.includes(pair.ends[1]);
}

/** Working-voltage readings that were refused as evidence because the supply was not direct or not stated. */
export function refusedWorkingVoltages(bench: Bench): { exhibit: string; supply: string }[] {
  return exhibitsOf(bench, 'workingVoltage').flatMap((exhibit) => {
    const supply = findCondition(conditionsOf(bench, { ...exhibit, day: undefined }).supply);
    return supply === 'direct' ? [] : [{ exhibit: exhibit.id, supply: supply ?? 'notStated' }];
  });
}
