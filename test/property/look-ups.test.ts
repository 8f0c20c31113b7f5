import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { requiredEfficiency } from '../../src/core/formula/load/required-efficiency.ts';
import type { PublishedTable } from '../../src/core/table/define-table.ts';
import { averageEfficiency } from '../../src/core/table/eu-2019-1782/2019/average-efficiency.ts';
import { averageEfficiency as promised } from '../../src/core/table/eu-code-of-conduct/5/average-efficiency.ts';
import { bodyImpedance } from '../../src/core/table/iec-60479-1/1994/body-impedance.ts';
import { chargedCapacitor } from '../../src/core/table/iec-62368-1/2018/charged-capacitor.ts';
import { coveringRow, getCell, lookUp } from '../../src/core/table/look-up.ts';
import { TABLES } from '../../src/core/table/registry.ts';
import { doubtOf, given } from '../../src/core/trace/derived.ts';
import { FEW, SEED } from './seed.ts';

const RUN = { seed: SEED, numRuns: FEW };
const EFFICIENCY: readonly string[] = [averageEfficiency.id, promised.id]; // their cells are coefficients of curves, not values
/** Tables whose cells fall as the key grows: a greater capacitor may hold less voltage, a body resists less at more volts. */
const FALLING: readonly string[] = [chargedCapacitor.id, bodyImpedance.id];
const entered = TABLES.filter((table) => table.lookUp !== 'exact key');
const growing = entered.filter(({ id }) => !EFFICIENCY.includes(id) && !FALLING.includes(id));
const falling = entered.filter(({ id }) => FALLING.includes(id));
const columns = (tables: readonly PublishedTable[]) =>
  tables.flatMap((table) => Object.keys(table.columns).map((column) => [table.id, column, table] as const));
/** A printed key in SI, as a person's own text would be read: 18 nF is 1.8e-8 F to the last bit. */
const inSi = (key: number | string, { key: { factor } }: PublishedTable): number =>
  factor >= 1 ? (key as number) * factor : (key as number) / Math.round(1 / factor);
const keysOf = (table: PublishedTable): number[] => table.rows.map(([key]) => inSi(key, table));

function valueAt(table: PublishedTable, column: string, key: number): number | null {
  const entry = given('typed', key, table.key.si as 'V', { id: 'key', name: 'key' });
  return lookUp(table, entry, column, 'cell', 'x')?.value ?? null;
}

/** Keys up to a little beyond the table, rows themselves often among them. */
const keyIn = (table: PublishedTable) => {
  const keys = keysOf(table);
  const last = keys.at(-1)!;
  return fc.oneof(fc.double({ min: 0, max: last, noNaN: true }), fc.constantFrom(...keys));
};

describe('tables that are entered with a number', () => {
  it('are those that were counted', () => {
    expect(entered.length).toBeGreaterThanOrEqual(8);
  });

  it.each(columns(growing))('%s, %s: a greater key never asks for less', (_, column, table) => {
    fc.assert(
      fc.property(keyIn(table), keyIn(table), (one, two) => {
        const [low, high] = [Math.min(one, two), Math.max(one, two)];
        expect(valueAt(table, column, low)!).toBeLessThanOrEqual(valueAt(table, column, high)! * (1 + 1e-12));
      }),
      RUN,
    );
  });

  it.each(columns(falling))('%s, %s: a greater key never allows more', (_, column, table) => {
    fc.assert(
      fc.property(keyIn(table), keyIn(table), (one, two) => {
        const [low, high] = [Math.min(one, two), Math.max(one, two)];
        expect(valueAt(table, column, low)!).toBeGreaterThanOrEqual(valueAt(table, column, high)! * (1 - 1e-12));
      }),
      RUN,
    );
  });

  it.each(columns(entered))('%s, %s: a printed row is taken as printed', (_, column, table) => {
    for (const [key] of table.rows) {
      expect(valueAt(table, column, inSi(key, table))).toBe(getCell(table, key, column, 'cell', 'x').value);
    }
  });

  it.each(columns(entered))('%s, %s: nothing is told beyond the last row', (_, column, table) => {
    const last = keysOf(table).at(-1)!;
    expect(valueAt(table, column, last * 1.0001)).toBeNull();
    expect(coveringRow(table, last * 1.0001)).toBeNull();
  });

  it.each(columns(entered))(
    '%s, %s: between two rows the answer lies between theirs, and a covering row gives its own',
    (_, column, table) => {
      fc.assert(
        fc.property(keyIn(table), (key) => {
          const keys = keysOf(table);
          const above = keys.findIndex((row) => row >= key);
          const [upper, lower] = [valueAt(table, column, keys[above]!)!, valueAt(table, column, keys[Math.max(0, above - 1)]!)!];
          const found = valueAt(table, column, key)!;
          if (table.lookUp === 'first row that covers') expect(found).toBe(upper);
          else {
            expect(found).toBeGreaterThanOrEqual(Math.min(lower, upper) * (1 - 1e-12));
            expect(found).toBeLessThanOrEqual(Math.max(lower, upper) * (1 + 1e-12));
          }
          expect(coveringRow(table, key)).toBe(keys[above]);
        }),
        RUN,
      );
    },
  );

  it.each(columns(growing))('%s, %s: a key that may lie in the next row carries the answer of that row too', (_, column, table) => {
    const keys = keysOf(table);
    for (const [index, key] of keys.slice(0, -1).entries()) {
      const form = doubtOf({ id: 'gain', u: key * 0.01, means: 'gain' });
      const entry = given('typed', key * 0.999, table.key.si as 'V', { id: 'key', name: 'key' }, { form });
      const found = lookUp(table, entry, column, 'cell', 'x')!;
      if (table.lookUp !== 'first row that covers') continue;
      const [here, next] = [valueAt(table, column, key)!, valueAt(table, column, keys[index + 1]!)!];
      if (here !== next) expect(found.alternatives).toContain(next);
      else expect(found.alternatives).not.toContain(Number.NaN);
    }
  });
});

describe('the least average efficiency', () => {
  const least = (family: 'basic' | 'low', watts: number): number => {
    const [a, b, c] = ['A', 'B', 'C'].map((letter) => valueAt(averageEfficiency, family + letter, watts)!);
    return requiredEfficiency.compute({ power: watts, a: a!, b: b!, c: c! });
  };

  it.each(['basic', 'low'] as const)('of %s voltage never falls with the nameplate power, across all three bands', (family) => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 250, noNaN: true }), fc.double({ min: 0.1, max: 250, noNaN: true }), (one, two) => {
        expect(least(family, Math.min(one, two))).toBeLessThanOrEqual(least(family, Math.max(one, two)) + 1e-12);
      }),
      RUN,
    );
  });

  it('is a share that a supply can reach', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 250, noNaN: true }), (watts) => {
        expect(least('basic', watts)).toBeGreaterThan(0.2);
        expect(least('basic', watts)).toBeLessThanOrEqual(0.88);
        expect(least('low', watts)).toBeLessThanOrEqual(least('basic', watts));
      }),
      RUN,
    );
  });
});
