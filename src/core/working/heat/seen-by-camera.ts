import type { SURFACES } from '../../evidence/sample.ts';
import type { Value } from '../../evidence/value.ts';
import { derive } from '../../formula/derive.ts';
import { trueTemperature } from '../../formula/thermal/true-temperature.ts';
import { trueTemperatureInBand } from '../../formula/thermal/true-temperature-in-band.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { surfaceEmissivity } from '../../table/camera-makers/2026/surface-emissivity.ts';
import { findCell } from '../../table/look-up.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { addForms, uncertaintyOf } from '../../trace/leaf.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { findRead } from '../bench/open-value.ts';

const LEAST_EMISSIVITY = 0.6; // below it a camera reading of a surface is a guess; common practice
const EMISSIVITY_HALF_WIDTH = 0.03; // of a stated emissivity whose doubt is not stated; common practice

/** Something that says what a camera looked at: a place, or a region drawn on a picture. `at` is where the case says so. */
export interface Surface {
  readonly id: string;
  readonly at: string;
  readonly emissivity?: Value | undefined;
  readonly surface?: Value<(typeof SURFACES)[number]> | undefined;
}

/** What a camera showed of a surface. */
export interface Shown {
  /** The nearest first: the first that says anything counts. */
  readonly of: readonly Surface[];
  readonly shown: Derived;
  /** Emissivity that the camera was set to, and where the case says so. */
  readonly set: string | undefined;
  readonly field: string;
  readonly reflected: Derived | null;
  /** Unique among the readings of a camera. */
  readonly id: string;
}

export interface Seen {
  readonly temperature: Derived | null;
  readonly refused: 'bareMetal' | 'emissivityUnknown' | 'reflectionTooStrong' | null;
}

/** Temperature of a surface from what a camera showed of it; refused for bare metal and where emissivity or reflection is not known. */
export function seenByCamera({ of, shown, set: setText, field, reflected, id }: Shown): Seen {
  const refuse = (refused: Seen['refused']): Seen => ({ temperature: null, refused });
  const emissivity = of.reduce<Derived | null>((known, surface) => known ?? emissivityOf(surface), null);
  if (emissivity === null) return refuse('emissivityUnknown');
  if (emissivity.value < LEAST_EMISSIVITY) return refuse('bareMetal');
  const set = setText === undefined ? null : parseQuantity(setText, 'ratio');
  if (set === null || isRefusal(set) || reflected === null) return refuse('emissivityUnknown');
  const cameraEmissivity = given('typed', set.value, '1', { id: field, name: 'cameraEmissivity', symbol: 'ε_c', field });
  const byFourthPower = trueTemperature.compute({
    shown: shown.value,
    cameraEmissivity: set.value,
    emissivity: emissivity.value,
    reflected: reflected.value,
  });
  // what is reflected may not exceed what is seen: then emissivity or reflection is wrong
  if (byFourthPower <= 0) return refuse('reflectionTooStrong');
  const inBand = derive(trueTemperatureInBand, { shown, cameraEmissivity, emissivity, reflected }, `heat/${id}/surface`);
  // the band of the camera is not known: how far the two models lie apart is a doubt of its own
  const apart = byFourthPower - inBand.value;
  const form = addForms([
    { form: inBand.form, factor: 1 },
    { form: doubtOf({ id: `camera-band/${id}`, u: rectangular(Math.abs(apart)), means: 'cameraBand' }), factor: 1 },
  ]);
  const notes = [...inBand.step.notes, { key: 'cameraModels', args: { apartK: apart } }];
  const u = inBand.side === undefined ? uncertaintyOf(form) : null;
  return { temperature: { ...inBand, form, step: { ...inBand.step, form, u, notes } }, refused: null };
}

function emissivityOf({ id, at, emissivity, surface }: Surface): Derived | null {
  const text = findRead(emissivity);
  const quantity = text === null ? null : parseQuantity(text, 'ratio');
  if (quantity === null || isRefusal(quantity)) return emissivityOfSurface(id, findRead(surface));
  const u = quantity.u ?? rectangular(EMISSIVITY_HALF_WIDTH);
  const field = `${at}/emissivity`;
  return given(
    'typed',
    quantity.value,
    '1',
    { id: field, name: 'emissivity', symbol: 'ε', field },
    { form: doubtOf({ id: `emissivity/${id}`, u, means: 'emissivity' }) },
  );
}

/** Looked up by what the surface is; the half width of its range is its doubt. */
function emissivityOfSurface(id: string, surface: string | null): Derived | null {
  if (surface === null) return null;
  const cell = (column: 'emissivity' | 'halfWidth'): Derived | null =>
    findCell(surfaceEmissivity, surface, column, `heat/surface/${surface}/${column}`, 'ε');
  const [emissivity, half] = [cell('emissivity'), cell('halfWidth')];
  if (emissivity === null || half === null) return null;
  const form = doubtOf({ id: `emissivity/${id}`, u: rectangular(half.value), means: 'emissivity' });
  return { ...emissivity, form, step: { ...emissivity.step, form, u: uncertaintyOf(form) } };
}
