import type { ExhibitOf } from '../../evidence/case.ts';
import type { Value } from '../../evidence/value.ts';
import { derive } from '../../formula/derive.ts';
import { torqueOnSocket } from '../../formula/label/torque-on-socket.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { plugTorque } from '../../table/iec-60065/2014/plug-torque.ts';
import { getCell } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { type Opened, openValue } from '../bench/open-value.ts';

type Body = ExhibitOf<'body'>;

/** One measurement on the plug or the body, laid open. */
export interface BodyReading {
  readonly field: string;
  readonly opened: Opened<unknown>;
  readonly value: Derived | null;
}

export function bodyReading(
  bench: Bench,
  body: Body,
  value: Value<string> | undefined,
  key: string,
  kind: 'mass' | 'length',
  symbol: string,
): BodyReading {
  const field = `/exhibits/${body.id}/${key}`;
  const opened: Opened<string> = body.struck === undefined ? openValue<string>(value) : { state: 'struck', because: body.struck };
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, kind) : null;
  if (opened.state !== 'read' || quantity === null || isRefusal(quantity)) return { field, opened, value: null };
  const role = kind === 'mass' ? 'mass' : 'distance';
  return {
    field,
    opened,
    value: deriveReading(bench, quantity, { field, role, day: body.day, instrument: opened.read.instrument, symbol }),
  };
}

/**
 * Torque on the socket. Where nobody balanced the unit its centre of mass lies nearer than its greatest dimension: an upper bound, which can
 * only pass.
 */
export function torqueOf(bench: Bench, body: Body): BodyReading & { readonly byGreatestDimension: boolean } {
  const mass = bodyReading(bench, body, body.mass, 'mass', 'mass', 'm');
  const centre = bodyReading(bench, body, body.centreOfMass, 'centreOfMass', 'length', 'x');
  const dimension = centre.opened.state === 'notLooked' ? greatestDimension(bench, body) : null;
  const arm = centre.value ?? dimension;
  if (mass.value === null || arm === null) return { ...(mass.value === null ? mass : centre), value: null, byGreatestDimension: false };
  const pivot = getCell(plugTorque, 'plugInBody', 'pivot', 'label/torque-pivot', 'd');
  return {
    ...mass,
    value: derive(torqueOnSocket, { mass: mass.value, centre: arm, pivot }, `label/${body.id}/torque`),
    byGreatestDimension: centre.value === null,
  };
}

function greatestDimension(bench: Bench, body: Body): Derived | null {
  const opened = openValue<readonly string[]>(body.size as Value<readonly string[]> | undefined);
  if (opened.state !== 'read') return null;
  const field = `/exhibits/${body.id}/size`;
  const sides = opened.v.flatMap((text) => {
    const quantity = parseQuantity(text, 'length');
    return isRefusal(quantity) || quantity.side === 'above' ? [] : [quantity];
  });
  if (sides.length < opened.v.length) return null;
  const greatest = sides.reduce((one, two) => (two.value > one.value ? two : one));
  const read = deriveReading(bench, greatest, { field, role: 'distance', day: body.day, instrument: opened.read.instrument, symbol: 'x' });
  return { ...read, side: 'below', step: { ...read.step, side: 'below', u: null } };
}
