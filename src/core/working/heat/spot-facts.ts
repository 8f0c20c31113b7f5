import type { ExhibitOf } from '../../evidence/case.ts';
import type { Conditions } from '../../evidence/conditions.ts';
import type { Place } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { atHighestAmbient } from '../../formula/thermal/at-highest-ambient.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { recallOne } from '../../recall/recall.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, fieldOfCondition, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { seenByCamera } from './seen-by-camera.ts';
import { type LoadState, stateOfLoads } from './state-of-loads.ts';
import { windingOf } from './winding-resistance.ts';

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
  /** Worked out from a lesser load: from which current to which, and whether two loads told how the rise follows the loss. */
  readonly carriedFrom?: { readonly current: number; readonly to: number; readonly measured: boolean };
  /** Of a winding, from its resistance: the mean of all turns, which may be 10 K hotter than what a thermocouple finds on it. */
  readonly byResistance?: true;
  /** Where a log is heading: no matter how many minutes it ran. */
  readonly settled?: true;
}

const AMBIENT_FACTOR = 1.075; // kelvin of part per kelvin of ambient: 1.00 to 1.15
const AMBIENT_FACTOR_HALF_WIDTH = 0.075;

export function spotReadings(bench: Bench, levels: readonly LevelFacts[] = []): SpotReading[] {
  return exhibitsOf(bench, 'spots').flatMap((exhibit) => {
    const conditions = { ...exhibit, rows: NO_ROWS }; // a row is the same whatever is read beside it
    return exhibit.rows.map((row) =>
      recallOne(readSpot, bench, { of: spotReadings, id: `${exhibit.id}/${row.id}` }, row, conditions, levels),
    );
  });
}

const NO_ROWS: ExhibitOf<'spots'>['rows'] = [];

function readSpot(
  bench: Bench,
  row: ExhibitOf<'spots'>['rows'][number],
  exhibit: ExhibitOf<'spots'>,
  levels: readonly LevelFacts[],
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
  if (row.resistance !== undefined) return { ...common, ...windingOf(bench, exhibit, row), refused: null, byResistance: true };
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
  const reflected =
    temperatureOf(bench, findRead(row.reflected), `/exhibits/${exhibit.id}/rows/${row.id}/reflected`, exhibit.day, 'T_r') ?? ambient;
  const at = `/exhibits/${exhibit.id}/rows/${row.id}`;
  return {
    ...common,
    ...seenByCamera({
      of: [{ ...place, at: `/places/${place.id}` }],
      shown,
      set: row.cameraEmissivity,
      field: `${at}/cameraEmissivity`,
      reflected,
      id: `${exhibit.id}/${row.id}`,
    }),
  };
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
