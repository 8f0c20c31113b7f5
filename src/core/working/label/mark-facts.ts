import { derive } from '../../formula/derive.ts';
import { powerDensity } from '../../formula/label/power-density.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { parseRange } from '../../quantity/parse-range.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, openValue } from '../bench/open-value.ts';
import type { Promised } from './promise-facts.ts';

/** Class and plug together; null where either is not read. */
export function classAndPlug(bench: Bench): { word: 'classThree' | 'classOneTwoPins' | 'possible'; fields: string[] } | null {
  const [label] = exhibitsOf(bench, 'label').filter(({ struck, class: own }) => struck === undefined && findRead(own) !== null);
  if (label === undefined) return null;
  const own = findRead(label.class);
  const fields = [`/exhibits/${label.id}/class`];
  if (own === 'III') return { word: 'classThree', fields };
  const [body] = exhibitsOf(bench, 'body').filter(
    ({ struck, plugSystem }) => struck === undefined && openValue(plugSystem).state === 'read',
  );
  if (body === undefined) return null;
  return {
    word: own === 'I' && findRead(body.plugSystem) === 'flatTwoPin' ? 'classOneTwoPins' : 'possible',
    fields: [...fields, `/exhibits/${body.id}/plugSystem`],
  };
}

/** Greatest input current as printed, of a unit on the flat two-pin plug. */
export function inputOfFlatPlug(bench: Bench): Derived | null {
  const flat = exhibitsOf(bench, 'body').some(({ struck, plugSystem }) => struck === undefined && findRead(plugSystem) === 'flatTwoPin');
  return flat ? printedInputCurrent(bench) : null;
}

export function printedInputCurrent(bench: Bench): Derived | null {
  for (const label of exhibitsOf(bench, 'label')) {
    const text = label.struck === undefined ? findRead(label.input?.current) : null;
    const range = text === null ? null : parseRange(text, 'current');
    if (range === null || isRefusal(range)) continue;
    const field = `/exhibits/${label.id}/input/current`;
    return given('typed', range.to.value, 'A', { id: field, name: 'inputCurrent', field, symbol: 'I' });
  }
  return null;
}

/** Largest power that anybody promises, over the size of the case. */
export function densityOf(bench: Bench, promised: readonly Promised[]): Derived | null {
  const powers = promised.filter(({ of }) => of === 'power').map(({ least }) => least);
  const largest = powers.toSorted((a, b) => b.value - a.value)[0];
  if (largest === undefined) return null;
  for (const body of exhibitsOf(bench, 'body')) {
    const size = openValue<readonly string[]>(body.size as Parameters<typeof openValue<readonly string[]>>[0]);
    if (body.struck !== undefined || size.state !== 'read') continue;
    const sides = size.v.map((text, index) => {
      const quantity = parseQuantity(text, 'length');
      if (isRefusal(quantity) || quantity.side !== undefined || quantity.value <= 0) return null;
      const reading = deriveReading(bench, quantity, {
        field: `/exhibits/${body.id}/size`,
        role: 'distance',
        day: body.day,
        instrument: size.read.instrument,
        symbol: 'a',
      });
      return { ...reading, step: { ...reading.step, id: `/exhibits/${body.id}/size/${index}` } };
    });
    const [one, two, three] = sides;
    if (one == null || two == null || three == null) continue;
    return derive(powerDensity, { power: largest, one, two, three }, `label/${body.id}/power-density`);
  }
  return null;
}
