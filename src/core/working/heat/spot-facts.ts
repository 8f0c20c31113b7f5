import type { ExhibitOf } from '../../evidence/case.ts';
import type { Conditions } from '../../evidence/conditions.ts';
import type { Place } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { atHighestAmbient } from '../../formula/thermal/at-highest-ambient.ts';
import { trueTemperature } from '../../formula/thermal/true-temperature.ts';
import { trueTemperatureInBand } from '../../formula/thermal/true-temperature-in-band.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { surfaceEmissivity } from '../../table/camera-makers/2026/surface-emissivity.ts';
import { findCell } from '../../table/look-up.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { addForms, uncertaintyOf } from '../../trace/leaf.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, fieldOfCondition, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { type LoadState, stateOfLoads } from './state-of-loads.ts';

export interface SpotReading {
  readonly place: Place;
  readonly field: string;
  readonly opened: Opened<string>;
  readonly under: Conditions;
  readonly ambient: Derived | null;
  /** As read, emissivity corrected; null when it cannot count. */
  readonly temperature: Derived | null;
  readonly refused: 'bareMetal' | 'emissivityUnknown' | 'reflectionTooStrong' | null;
  /** Conditions that are not stated: without load, mains, cover, ambient and minutes a temperature is stored and not comparable. */
  readonly missing: readonly string[];
  /** Read with the cover open or opened before: the closed unit is at least as hot. */
  readonly atLeast: boolean;
  /** At the label load, at the worst load it sustains, shorted, or at some lesser load. */
  readonly state: LoadState;
  /** Of a winding, from its resistance: the mean of all turns, which may be 10 K hotter than what a thermocouple finds on it. */
  readonly byResistance?: true;
  /** Where a log is heading: no matter how many minutes it ran. */
  readonly settled?: true;
}

const LEAST_EMISSIVITY = 0.6; // below it a camera reading of a surface is a guess; common practice
const EMISSIVITY_HALF_WIDTH = 0.03; // of a looked-up emissivity when none is stated; common practice
const AMBIENT_FACTOR = 1.075; // kelvin of part per kelvin of ambient: 1.00 to 1.15
const AMBIENT_FACTOR_HALF_WIDTH = 0.075;

export function spotReadings(bench: Bench, levels: readonly LevelFacts[] = []): SpotReading[] {
  return exhibitsOf(bench, 'spots').flatMap((exhibit) => exhibit.rows.map((row) => readSpot(bench, levels, exhibit, row)));
}

function readSpot(
  bench: Bench,
  levels: readonly LevelFacts[],
  exhibit: ExhibitOf<'spots'>,
  row: ExhibitOf<'spots'>['rows'][number],
): SpotReading {
  const place = bench.places.get(row.place);
  if (place === undefined) throw new Error(`${row.place} passed the references and is missing`);
  const field = `/exhibits/${exhibit.id}/rows/${row.id}/value`;
  const opened: Opened<string> = exhibit.struck === undefined ? openValue<string>(row.value) : { state: 'struck', because: exhibit.struck };
  const own = opened.state === 'read' ? opened.read.under : undefined;
  const under = conditionsOf(bench, exhibit, [own]);
  const ambient = temperatureOf(bench, findCondition(under.ambient), fieldOfCondition(exhibit, 'ambient', field, own), exhibit.day, 'T_a');
  const missing = missingConditions(under);
  const cover = findCondition(under.cover);
  const common = {
    place,
    field,
    opened,
    under,
    ambient,
    missing,
    atLeast: place.outside !== true && cover !== null && cover !== 'closed',
    state: stateOfLoads(levels, under),
  };
  if (opened.state !== 'read') return { ...common, temperature: null, refused: null };
  const quantity = parseQuantity(opened.v, 'temperature');
  if (isRefusal(quantity)) return { ...common, temperature: null, refused: null };
  const shown = deriveReading(bench, quantity, {
    field,
    role: 'temperature',
    day: exhibit.day,
    instrument: opened.read.instrument,
    symbol: 'T',
  });
  if (row.by === 'resistance') return { ...common, temperature: shown, refused: null, byResistance: true };
  if (row.by === 'contact') return { ...common, temperature: shown, refused: null };
  const emissivity = emissivityOf(place);
  if (emissivity === null) return { ...common, temperature: null, refused: 'emissivityUnknown' };
  if (emissivity.value < LEAST_EMISSIVITY) return { ...common, temperature: null, refused: 'bareMetal' };
  const set = row.cameraEmissivity === undefined ? null : parseQuantity(row.cameraEmissivity, 'ratio');
  if (set === null || isRefusal(set)) return { ...common, temperature: null, refused: 'emissivityUnknown' };
  const reflected =
    temperatureOf(bench, findRead(row.reflected), `/exhibits/${exhibit.id}/rows/${row.id}/reflected`, exhibit.day, 'T_r') ?? ambient;
  if (reflected === null) return { ...common, temperature: null, refused: 'emissivityUnknown' };
  const cameraEmissivity = given('typed', set.value, '1', {
    id: `/exhibits/${exhibit.id}/rows/${row.id}/cameraEmissivity`,
    name: 'cameraEmissivity',
    symbol: 'ε_c',
    field: `/exhibits/${exhibit.id}/rows/${row.id}/cameraEmissivity`,
  });
  // what is reflected may not exceed what is seen: then emissivity or reflection is wrong
  if (
    trueTemperature.compute({
      shown: shown.value,
      cameraEmissivity: cameraEmissivity.value,
      emissivity: emissivity.value,
      reflected: reflected.value,
    }) <= 0
  )
    return { ...common, temperature: null, refused: 'reflectionTooStrong' };
  const seen = { shown, cameraEmissivity, emissivity, reflected };
  const inBand = derive(trueTemperatureInBand, seen, `heat/${exhibit.id}/${row.id}/surface`);
  const byFourthPower = trueTemperature.compute({
    shown: shown.value,
    cameraEmissivity: cameraEmissivity.value,
    emissivity: emissivity.value,
    reflected: reflected.value,
  });
  // the band of the camera is not known: how far the two models lie apart is a doubt of its own
  const apart = byFourthPower - inBand.value;
  const form = addForms([
    { form: inBand.form, factor: 1 },
    { form: doubtOf({ id: `camera-band/${exhibit.id}/${row.id}`, u: rectangular(Math.abs(apart)), means: 'cameraBand' }), factor: 1 },
  ]);
  const notes = [...inBand.step.notes, { key: 'cameraModels', args: { apartK: apart } }];
  const temperature: Derived = {
    ...inBand,
    form,
    step: { ...inBand.step, form, u: inBand.side === undefined ? uncertaintyOf(form) : null, notes },
  };
  return { ...common, temperature, refused: null };
}

/** Conditions without which a temperature is stored and not comparable. */
export function missingConditions(under: Conditions): string[] {
  const missing = (['mains', 'ambient', 'cover', 'minutes'] as const).filter((key) => findCondition(under[key]) === null) as string[];
  return under.loads === undefined || under.loads.length === 0 ? [...missing, 'loads'] : missing;
}

export function temperatureOf(bench: Bench, text: string | null, field: string, day: string | undefined, symbol: string): Derived | null {
  const quantity = text === null ? null : parseQuantity(text, 'temperature');
  return quantity === null || isRefusal(quantity) ? null : deriveReading(bench, quantity, { field, role: 'ambient', day, symbol });
}

function emissivityOf(place: Place): Derived | null {
  const text = findRead(place.emissivity);
  const quantity = text === null ? null : parseQuantity(text, 'ratio');
  if (quantity === null || isRefusal(quantity)) return emissivityOfSurface(place);
  const u = quantity.u ?? rectangular(EMISSIVITY_HALF_WIDTH);
  const field = `/places/${place.id}/emissivity`;
  return given(
    'typed',
    quantity.value,
    '1',
    { id: field, name: 'emissivity', symbol: 'ε', field },
    { form: doubtOf({ id: `emissivity/${place.id}`, u, means: 'emissivity' }) },
  );
}

/** Looked up by what the surface is; the half width of its range is its doubt. */
function emissivityOfSurface(place: Place): Derived | null {
  const surface = findRead(place.surface);
  if (surface === null) return null;
  const cell = (column: 'emissivity' | 'halfWidth'): Derived | null =>
    findCell(surfaceEmissivity, surface, column, `heat/surface/${surface}/${column}`, 'ε');
  const [emissivity, half] = [cell('emissivity'), cell('halfWidth')];
  if (emissivity === null || half === null) return null;
  const form = doubtOf({ id: `emissivity/${place.id}`, u: rectangular(half.value), means: 'emissivity' });
  return { ...emissivity, form, step: { ...emissivity.step, form, u: uncertaintyOf(form) } };
}

/** A limit that holds at the highest ambient, where it lies at the ambient of a reading (K). */
export function inFrameOfReading(limit: number, ambient: number, highest: number): number {
  return limit - AMBIENT_FACTOR * (highest - ambient);
}

/** A part's temperature at the highest ambient of the setting: losses grow with temperature, so it follows a little more than one to one. */
export function scaledToHighestAmbient(reading: SpotReading, setting: SettingFacts, id: string): Derived | null {
  if (reading.temperature === null || reading.ambient === null) return null;
  const factor = given(
    'constant',
    AMBIENT_FACTOR,
    '1',
    {
      id: 'heat/ambient-factor',
      name: 'estimate-ambient-factor',
      symbol: 'k',
      source: cite('bench', 'copper, on-resistance and leakage grow with temperature: 1.00 to 1.15 K per K', 'common-practice'),
    },
    { form: doubtOf({ id: 'estimate/ambient-factor', u: rectangular(AMBIENT_FACTOR_HALF_WIDTH), means: 'ambientFactor' }) },
  );
  const temperature: Derived = reading.atLeast ? { ...reading.temperature, side: 'above' } : reading.temperature;
  return derive(atHighestAmbient, { temperature, factor, ambient: reading.ambient, highest: setting.highestAmbient }, id);
}
