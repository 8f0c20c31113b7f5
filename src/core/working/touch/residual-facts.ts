import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { boundOverTries } from '../../formula/touch/bound-over-tries.ts';
import { leastCapacitance } from '../../formula/touch/least-capacitance.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { probeExponent } from '../../formula/touch/probe-exponent.ts';
import { residualAtHighestMains } from '../../formula/touch/residual-at-highest-mains.ts';
import { residualAtMoment } from '../../formula/touch/residual-at-moment.ts';
import { voltageWithoutProbe } from '../../formula/touch/voltage-without-probe.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, fieldOfCondition, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { type Opened, openValue } from '../bench/open-value.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { type PinCapacitance, pinCapacitance } from './pin-capacitance.ts';

/** What one reading says about unplugging at the crest of the highest mains: a floor, a ceiling, or both (then they are the same number). */
export interface ResidualReading {
  readonly field: string;
  readonly opened: Opened<string>;
  readonly capacitance: PinCapacitance;
  readonly atLeast: Derived | null;
  readonly atMost: Derived | null;
  /** Least capacitance that can hold what was read against the probe. */
  readonly leastCapacitance: Derived | null;
  readonly probe: 'known' | 'notStated' | 'tooHeavy';
  readonly notes: readonly Note[];
}

export const MOMENT_S = 2; // IEC 62368-1: two seconds after disconnection (secondary: the row of a test-report form)
const NEAR = 0.1; // readings within a tenth of that are carried to it along the exponential; house convention
const HEAVIEST_PROBE = 2; // beyond two time constants of its own the probe has eaten what it measures; house convention
const SURE = 1; // what is sure, less the probability asked for, is the chance left to be wrong

type PinsExhibit = Extract<ExhibitOf<'touch'>, { quantity: 'pinsAfterUnplugging' }>;

interface Run extends Omit<ResidualReading, 'atMost'> {
  /** At the highest mains; for a start nobody saw still without the allowance for the phase. */
  readonly value: Derived | null;
  readonly ceiling: boolean;
  readonly startSeen: boolean;
  readonly tries: number;
}

export function residualReadings(bench: Bench, setting: SettingFacts): ResidualReading[] {
  const runs = exhibitsOf(bench, 'touch')
    .filter((exhibit): exhibit is PinsExhibit => exhibit.quantity === 'pinsAfterUnplugging')
    .map((exhibit) => readRun(bench, setting, exhibit));
  // every try at a moment nobody saw makes it less likely that all of them missed the crest
  const blind = runs.filter(({ ceiling, startSeen }) => ceiling && !startSeen).reduce((sum, { tries }) => sum + tries, 0);
  return runs.map(({ value, ceiling, startSeen, tries: _tries, ...run }) => {
    if (value === null || !ceiling) return { ...run, atMost: null };
    if (startSeen) return { ...run, atMost: value };
    const tries = given('typed', blind, '1', { id: 'touch/pins/tries', name: 'tries', symbol: 'n' });
    const source = cite('house', 'the same probability as for a pass', 'official-text');
    const chance = given('constant', SURE - setting.decision.passAt, '1', {
      id: 'touch/pins/chance',
      name: 'setting-chance',
      symbol: 'α',
      source,
    });
    const bound = derive(boundOverTries, { voltage: value, tries, chance }, `${run.field}/bound`);
    return { ...run, atMost: bounded(bound, 'below'), notes: [...run.notes, { key: 'plugStartNotSeen', args: { tries: blind } }] };
  });
}

function readRun(bench: Bench, setting: SettingFacts, exhibit: PinsExhibit): Run {
  const opened: Opened<string> =
    exhibit.struck === undefined ? openValue<string>(exhibit.value) : { state: 'struck', because: exhibit.struck };
  const field = `/exhibits/${exhibit.id}/value`;
  const capacitance = pinCapacitance(bench, exhibit.from);
  const common = { field, opened, capacitance, tries: exhibit.tries ?? 1 };
  const nothing = {
    ...common,
    atLeast: null,
    value: null,
    leastCapacitance: null,
    ceiling: false,
    startSeen: false,
    probe: 'notStated',
    notes: [],
  } as const;
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, 'voltage') : null;
  if (opened.state !== 'read' || quantity === null || isRefusal(quantity) || (quantity.value < 0 && quantity.side !== undefined))
    return nothing;
  const at = { role: 'residualVoltage', day: exhibit.day, instrument: opened.read.instrument } as const;
  const read = deriveReading(bench, { ...quantity, value: Math.abs(quantity.value) }, { ...at, field, symbol: 'V_m' });
  const after = timeOf(exhibit);
  if (after === null) return nothing;
  const notes: Note[] = [];

  const probe = probeOf(bench, exhibit, opened.read.instrument);
  const exponent =
    probe === null || capacitance.state !== 'known'
      ? null
      : derive(probeExponent, { after, probe, capacitance: capacitance.actual }, `${field}/probe-exponent`);
  const heavy = exponent !== null && exponent.value > HEAVIEST_PROBE;
  const corrected = exponent === null || heavy ? read : derive(voltageWithoutProbe, { read, exponent }, `${field}/without-probe`);
  if (exponent !== null && !heavy) notes.push({ key: 'plugProbeCorrected', args: { probe: probe!.value } });
  const unloaded = capacitance.state === 'none' || (exponent !== null && !heavy);

  const seen = startOf(bench, exhibit, at);
  const crest = seen ?? crestOf(bench, exhibit, opened.read.under);
  // without the start no exponential can be drawn through the reading: then it counts only on its own side of the two seconds
  const near = seen === null ? 0 : NEAR;
  const early = after.value < MOMENT_S * (1 - near);
  const late = after.value > MOMENT_S * (1 + near);
  if (early) notes.push({ key: 'plugReadEarly', args: { after: after.value } });
  if (late) notes.push({ key: 'plugReadLate', args: { after: after.value } });
  if (crest === null) notes.push({ key: 'mainsNotStated', args: {} });
  const carried = (voltage: Derived, what: string): Derived => {
    const shifts = !early && !late && (after.value !== MOMENT_S || after.form.size > 0);
    return crest === null
      ? voltage
      : atHighestMains(setting, shifts ? atMoment(voltage, crest, after, `${field}/${what}`) : voltage, crest, `${field}/${what}`);
  };
  const value = carried(corrected, 'ceiling');
  // only a capture that shows the start proves that the probe was on all the time: else its part stays out of what must at least be there
  const least = seen === null ? carried(read, 'floor') : value;
  if (value.side === 'anywhere' || least.side === 'anywhere') return { ...nothing, notes };

  const exact = seen !== null && crest !== null && unloaded && !late && value.side === undefined;
  return {
    ...common,
    notes,
    probe: probe === null ? 'notStated' : heavy ? 'tooHeavy' : 'known',
    startSeen: seen !== null,
    ceiling: unloaded && crest !== null && !late && value.side !== 'above',
    value: early && value.side === undefined ? bounded(value, 'below') : value,
    atLeast: early || least.side === 'below' ? null : exact ? value : bounded(least, 'above'),
    leastCapacitance: probe === null || seen === null ? null : leastBehind(read, after, probe, seen, field),
  };
}

function atMoment(voltage: Derived, start: Derived, after: Derived, id: string): Derived {
  if (voltage.value >= start.value) return voltage;
  const source = cite('iec-62368-1', 'clause 5.5.2.2, two seconds after disconnection', 'secondary', {
    alsoBy: ['a published test-report form'],
  });
  const moment = given('constant', MOMENT_S, 's', { id: 'touch/pins/moment', name: 'setting-moment', symbol: 't_2', source });
  return derive(residualAtMoment, { start, voltage, after, moment }, `${id}/at-moment`);
}

function atHighestMains(setting: SettingFacts, voltage: Derived, start: Derived, id: string): Derived {
  const highest = derive(peakOfMains, { rms: setting.high }, 'touch/pins/highest-crest');
  return derive(residualAtHighestMains, { voltage, highest, start }, `${id}/at-highest-mains`);
}

function leastBehind(read: Derived, after: Derived, probe: Derived, start: Derived, field: string): Derived | null {
  if (read.value >= start.value || read.value <= 0 || read.side === 'below') return null;
  return derive(leastCapacitance, { after, probe, start, read }, `${field}/least-capacitance`);
}

function timeOf(exhibit: PinsExhibit): Derived | null {
  const quantity = parseQuantity(exhibit.after, 'time');
  if (isRefusal(quantity) || quantity.side !== undefined || quantity.value <= 0) return null;
  const field = `/exhibits/${exhibit.id}/after`;
  const doubt = quantity.u === null ? {} : { form: doubtOf({ id: `stated/${field}`, u: quantity.u, means: 'stated' }) };
  return given('typed', quantity.value, 's', { id: field, name: 'timeAfter', field, symbol: 't' }, doubt);
}

/** Input resistance of the instrument on the reading, else of the one that the day names. */
function probeOf(bench: Bench, exhibit: PinsExhibit, named: string | undefined): Derived | null {
  const id = named ?? (exhibit.day === undefined ? undefined : bench.days.get(exhibit.day)?.uses.residualVoltage);
  const text = id === undefined ? undefined : bench.instruments.get(id)?.inputResistance;
  const quantity = text === undefined ? null : parseQuantity(text, 'resistance');
  if (quantity === null || isRefusal(quantity) || quantity.side !== undefined || quantity.value <= 0) return null;
  const field = `/instruments/${id}/inputResistance`;
  return given('typed', quantity.value, 'Ω', { id: field, name: 'inputResistance', field, symbol: 'R_p' });
}

function startOf(
  bench: Bench,
  exhibit: PinsExhibit,
  at: { role: 'residualVoltage'; day: string | undefined; instrument: string | undefined },
): Derived | null {
  const opened = openValue<string>(exhibit.start);
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, 'voltage') : null;
  if (opened.state !== 'read' || quantity === null || isRefusal(quantity) || quantity.side !== undefined || quantity.value === 0)
    return null;
  return deriveReading(
    bench,
    { ...quantity, value: Math.abs(quantity.value) },
    { ...at, instrument: opened.read.instrument ?? at.instrument, field: `/exhibits/${exhibit.id}/start`, symbol: 'V_0' },
  );
}

/** The most that this run can have started at: the crest of the mains at the bench. */
function crestOf(bench: Bench, exhibit: PinsExhibit, own: Parameters<typeof fieldOfCondition>[3]): Derived | null {
  const text = findCondition(conditionsOf(bench, exhibit, [own]).mains);
  const quantity = text === null ? null : parseQuantity(text, 'voltage');
  if (quantity === null || isRefusal(quantity) || quantity.side !== undefined || quantity.value <= 0) return null;
  const rms = deriveReading(bench, quantity, {
    field: fieldOfCondition(exhibit, 'mains', `/exhibits/${exhibit.id}/value`, own),
    role: 'mains',
    day: exhibit.day,
    symbol: 'V',
  });
  return derive(peakOfMains, { rms }, `touch/${exhibit.id}/crest`);
}

function bounded(derived: Derived, side: 'below' | 'above'): Derived {
  return { ...derived, side, step: { ...derived.step, side, u: null } };
}
