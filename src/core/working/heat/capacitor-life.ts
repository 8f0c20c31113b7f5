import type { Part } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { aroundTheCan } from '../../formula/endurance/around-the-can.ts';
import { lifeFromNew } from '../../formula/endurance/life-from-new.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { ratingOf } from '../board/part-quantity.ts';

/**
 * Heating by ripple that a maker's rating allows, and what is taken for a ripple that nobody measured: anything from none to the rated one.
 * Read on the can it hardly matters, since a hot core also heats the can.
 */
const RATED_HEATING_K = 5;
const CAN_RATIO = 1.05; // cans of 5 to 12.5 mm
const CAN_RATIO_HALF = 0.05;

const source = cite('capacitor-makers', 'one maker’s lifetime sheet: 5 K at the rated ripple, α 1.0 to 1.1 for small cans', 'secondary');

/** Expected life from new of a capacitor whose can was read at `can`; null where its rated life or temperature was not read. */
export function capacitorLife(part: Part, can: Derived, id: string): { readonly life: Derived; readonly ratedTemperature: Derived } | null {
  const rated = ratingOf(part, 'life', 'time', 'L_0').at;
  const ratedTemperature = ratingOf(part, 'temperature', 'temperature', 'T_0').at;
  if (rated === null || ratedTemperature === null) return null;
  const ratedHeating = given('constant', RATED_HEATING_K, 'ΔK', {
    id: 'heat/rated-ripple-heating',
    name: 'estimate-rated-ripple-heating',
    symbol: 'ΔT_0',
    source,
  });
  const heating = given(
    'constant',
    RATED_HEATING_K / 2,
    'ΔK',
    { id: `heat/${part.id}/ripple-heating`, name: 'estimate-ripple-heating', symbol: 'ΔT', source },
    { form: doubtOf({ id: `ripple-heating/${part.id}`, u: rectangular(RATED_HEATING_K / 2), means: 'rippleHeating' }) },
  );
  const ratio = given(
    'constant',
    CAN_RATIO,
    '1',
    { id: 'heat/can-ratio', name: 'estimate-can-ratio', symbol: 'α', source },
    { form: doubtOf({ id: 'can-ratio', u: rectangular(CAN_RATIO_HALF), means: 'canRatio' }) },
  );
  const around = derive(aroundTheCan, { can, heating, ratio }, `${id}/around`);
  return { life: derive(lifeFromNew, { rated, ratedTemperature, around, ratedHeating, heating }, id), ratedTemperature };
}
