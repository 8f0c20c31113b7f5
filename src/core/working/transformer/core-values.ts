import type { ExhibitOf } from '../../evidence/case.ts';
import { core as coreTable } from '../../table/ferrite-cores/1998/core.ts';
import { saturation } from '../../table/ferrite-cores/1998/saturation.ts';
import { findCell } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { readStackValue } from './stack-value.ts';

/** "EE 16" and "ee16" are one core. */
export function coreKey(name: string): string {
  return name.replaceAll(/\s+/g, '').toUpperCase();
}

/** Whether somebody named a core that the table does not hold, and measured nothing that would stand in for it. */
export function isUnknownCore(exhibit: ExhibitOf<'stack'>): boolean {
  const name = findRead(exhibit.core);
  return name !== null && exhibit.coreArea === undefined && !coreTable.rows.some(([key]) => key === coreKey(name));
}

export interface CoreValues {
  readonly area: Derived | null;
  readonly length: Derived | null;
  /** Flux density at which its ferrite saturates at 100 °C. */
  readonly saturates: Derived;
}

/** What was measured on the core, else what the table prints for its shape. */
export function coreValues(bench: Bench, exhibit: ExhibitOf<'stack'>): CoreValues {
  const at = `/exhibits/${exhibit.id}`;
  const name = findRead(exhibit.core);
  const cell = (column: 'area' | 'length', symbol: string): Derived | null =>
    name === null ? null : findCell(coreTable, coreKey(name), column, `transformer/${exhibit.part}/core-${column}`, symbol);
  const ferrite = coreKey(findRead(exhibit.ferrite) ?? 'unnamed');
  const key = saturation.rows.some(([own]) => own === ferrite) ? ferrite : 'unnamed';
  const saturates = findCell(saturation, key, 'hot', `transformer/${exhibit.part}/saturates`, 'B_s');
  if (saturates === null) throw new Error(`${saturation.id} has no ${key}`);
  return {
    area: readStackValue(bench, exhibit, exhibit.coreArea, `${at}/coreArea`, 'area', 'A_e').at ?? cell('area', 'A_e'),
    length: readStackValue(bench, exhibit, exhibit.coreLength, `${at}/coreLength`, 'length', 'l_e').at ?? cell('length', 'l_e'),
    saturates,
  };
}
