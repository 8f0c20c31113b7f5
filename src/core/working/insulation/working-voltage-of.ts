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
import { findRead, openValue } from '../bench/open-value.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import type { PairFacts } from './pair-facts.ts';

const FACTOR = 1.15; // rms working voltage of a flyback over the mains, first estimate
const FACTOR_HALF_WIDTH = 0.05;

/**
 * The rms working voltage of a pair: the greatest reading on a direct supply at the mains it is judged at, else the mains itself between
 * mains conductors, else an estimate. Where the rectifier is one diode, or not known, a rail follows one mains conductor by plug way: a reading
 * below the mains then counts only if both ways were read.
 */
export function workingVoltageOf(bench: Bench, setting: SettingFacts, pair: PairFacts): { rms: Derived; measured: boolean } {
  const measured = measuredVoltage(bench, setting, pair, 'rms');
  const rectifiers = exhibitsOf(bench, 'board').flatMap(({ struck, rectifier }) => (struck === undefined ? [findRead(rectifier)] : []));
  const steady = rectifiers.includes('bridge') || rectifiers.includes('doubler');
  if (
    measured !== null &&
    (steady ||
      measured.ways.size === BOTH_WAYS ||
      (!rectifiers.includes('singleDiode') && measured.greatest.value >= setting.nominal.value))
  )
    return { rms: measured.greatest, measured: true };
  if (pair.betweenMains || pair.insulation === 'basic') return { rms: setting.nominal, measured: false };
  const rms = estimateOf(setting);
  // a reading above the estimate counts whatever the rectifier is
  if (measured !== null && measured.greatest.value >= rms.value) return { rms: measured.greatest, measured: true };
  return { rms: withNotes(rms, [{ key: 'estimated', args: {} }]), measured: false };
}

/** What a flyback puts across its barrier where nobody measured it: 1.10 to 1.20 times the mains. */
export function estimateOf(setting: SettingFacts): Derived {
  const factor = given(
    'constant',
    FACTOR,
    '1',
    {
      id: 'insulation/working-voltage-factor',
      name: 'estimate-working-voltage',
      symbol: 'k',
      source: cite('house', 'working voltage over mains, 1.10 to 1.20', 'memory'),
    },
    { form: doubtOf({ id: 'estimate/working-voltage', u: rectangular(FACTOR_HALF_WIDTH), means: 'estimatedWorkingVoltage' }) },
  );
  return derive(workingVoltageEstimate, { factor, mains: setting.nominal }, 'insulation/working-voltage-estimated');
}

/** The greatest peak read for a pair, null when nobody measured it. */
export function peakVoltageOf(bench: Bench, setting: SettingFacts, pair: PairFacts): Derived | null {
  return measuredVoltage(bench, setting, pair, 'peak')?.greatest ?? null;
}

const MAINS_TABLES_TO_HZ = 30e3; // IEC 62368-1: above it a table of its own is added

/** The greatest peak read for a pair in a voltage that swings faster than 30 kHz, null where nobody read one. */
export function fastPeakOf(bench: Bench, setting: SettingFacts, pair: PairFacts): Derived | null {
  const fast = (exhibit: ExhibitOf<'workingVoltage'>): boolean => {
    const read = parseQuantity(findRead(exhibit.frequency) ?? '', 'frequency');
    return !isRefusal(read) && read.value > MAINS_TABLES_TO_HZ;
  };
  return measuredVoltage(bench, setting, pair, 'peak', fast)?.greatest ?? null;
}

const BOTH_WAYS = 2;
const LOW_MAINS = 0.95; // share of the nominal mains below which a reading says too little of it

function measuredVoltage(
  bench: Bench,
  setting: SettingFacts,
  pair: PairFacts,
  which: 'rms' | 'peak',
  counts: (exhibit: ExhibitOf<'workingVoltage'>) => boolean = () => true,
): { greatest: Derived; ways: ReadonlySet<string> } | null {
  const found: Derived[] = [];
  const ways = new Set<string>();
  for (const exhibit of exhibitsOf(bench, 'workingVoltage')) {
    if (exhibit.struck !== undefined || !joins(exhibit, pair) || !counts(exhibit)) continue;
    const opened = openValue(exhibit[which]);
    // behind an isolating or electronic source the output floats with the mains and the reading is near zero: never evidence
    const near = { ...exhibit.under, ...(opened.state === 'read' ? opened.read.under : {}) };
    if (opened.state !== 'read' || findCondition(near.supply) !== 'direct') continue;
    const mains = parseQuantity(findCondition(conditionsOf(bench, exhibit, [opened.read.under]).mains) ?? '', 'voltage');
    if (isRefusal(mains) || mains.value < LOW_MAINS * setting.nominal.value) continue;
    const quantity = parseQuantity(opened.v, 'voltage');
    if (isRefusal(quantity)) continue;
    const way = findCondition(near.orientation);
    if (way !== null) ways.add(way);
    found.push(
      deriveReading(bench, quantity, {
        field: `/exhibits/${exhibit.id}/${which}`,
        role: 'scope',
        day: exhibit.day,
        instrument: opened.read.instrument,
        symbol: 'U_w',
      }),
    );
  }
  const [greatest] = found.sort((a, b) => b.value - a.value);
  return greatest === undefined ? null : { greatest, ways };
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
