import { derive } from '../../src/core/formula/derive.ts';
import { FORMULAS } from '../../src/core/formula/registry.ts';
import { findCell, lookUp } from '../../src/core/table/look-up.ts';
import { TABLES } from '../../src/core/table/registry.ts';
import { type Derived, given } from '../../src/core/trace/derived.ts';
import { inPrintedUnit, siUnitOf } from './printed-unit.ts';
import type { WorkedExample } from './worked-example.ts';

/** What the project computes for an example, in the unit the figure is printed in. */
export function computeExample(example: WorkedExample): number {
  const result = 'formula' in example ? byFormula(example.formula, example.inputs) : byTable(example.table, example.inputs);
  if (result.unit !== siUnitOf(example.unit)) throw new Error(`the result is in ${result.unit}, the figure in ${example.unit}`);
  return inPrintedUnit(example.states === undefined ? result.value : example.states(result.value), example.unit);
}

/** Greatest difference that still agrees: the tolerance, and the last bits that a change of unit costs. */
export function allowance(example: WorkedExample): number {
  const LAST_BITS = 1e-12;
  return example.tolerance + LAST_BITS * Math.abs(example.printed);
}

function byFormula(id: string, inputs: WorkedExample['inputs']): Derived {
  const formula = FORMULAS.find((one) => one.id === id);
  if (formula === undefined) throw new Error(`there is no formula ${id}`);
  const wanted = Object.keys(formula.inputs).sort().join(', ');
  const got = Object.keys(inputs).sort().join(', ');
  if (wanted !== got) throw new Error(`${id} takes ${wanted}, the example gives ${got}`);
  const derived: Record<string, Derived> = {};
  for (const [name, { unit, symbol }] of Object.entries(formula.inputs)) {
    const value = inputs[name];
    if (typeof value !== 'number') throw new Error(`${name} is not a number`);
    derived[name] = given('typed', value, unit, { id: `example/${name}`, name, symbol });
  }
  return derive(formula, derived, 'example/result');
}

function byTable(path: string, inputs: WorkedExample['inputs']): Derived {
  const table = TABLES.find((one) => path.startsWith(`${one.id}/`));
  if (table === undefined) throw new Error(`there is no table for ${path}`);
  const column = path.slice(table.id.length + 1);
  const { key } = inputs;
  if (key === undefined || Object.keys(inputs).length !== 1) throw new Error('a table is entered with one key');
  const found =
    table.lookUp === 'exact key'
      ? findCell(table, key, column, 'example/cell', 'x')
      : lookUp(table, given('typed', key as number, table.key.si as 'V', { id: 'example/key', name: 'key' }), column, 'example/cell', 'x');
  if (found === null) throw new Error(`${path} has no cell for ${key}`);
  return found;
}
