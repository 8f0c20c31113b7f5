import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { ungappedInductance } from '../../formula/magnetics/ungapped-inductance.ts';
import { cite } from '../../source/source.ts';
import { core as coreTable } from '../../table/ferrite-cores/1998/core.ts';
import { saturation } from '../../table/ferrite-cores/1998/saturation.ts';
import { findCell } from '../../table/look-up.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
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
  /** Inductance of one turn on the core without a gap: as its catalogue prints it, else estimated from its size. */
  readonly ungapped: Derived | null;
  /** Flux density at which its ferrite saturates at 100 °C. */
  readonly saturates: Derived;
}

/** What was measured on the core, else what the table prints for its shape. */
export function coreValues(bench: Bench, exhibit: ExhibitOf<'stack'>): CoreValues {
  const at = `/exhibits/${exhibit.id}`;
  const name = findRead(exhibit.core);
  const cell = (column: 'area' | 'length' | 'ungapped', symbol: string): Derived | null =>
    name === null ? null : findCell(coreTable, coreKey(name), column, `transformer/${exhibit.part}/core-${column}`, symbol);
  const ferrite = coreKey(findRead(exhibit.ferrite) ?? 'unnamed');
  const key = saturation.rows.some(([own]) => own === ferrite) ? ferrite : 'unnamed';
  const saturates = findCell(saturation, key, 'hot', `transformer/${exhibit.part}/saturates`, 'B_s');
  if (saturates === null) throw new Error(`${saturation.id} has no ${key}`);
  const area = readStackValue(bench, exhibit, exhibit.coreArea, `${at}/coreArea`, 'area', 'A_e').at ?? cell('area', 'A_e');
  const length = readStackValue(bench, exhibit, exhibit.coreLength, `${at}/coreLength`, 'length', 'l_e').at ?? cell('length', 'l_e');
  const printed = cell('ungapped', 'A_L');
  const ungapped = printed === null ? estimatedUngapped(area, length, exhibit.part) : withTolerance(printed);
  return { area, length, ungapped, saturates };
}

const PRINTED_TOLERANCE = 0.25; // of the inductance of one turn without a gap, as the catalogue states it

function withTolerance({ value, unit, step }: Derived): Derived {
  const form = doubtOf({ id: `${step.id}/tolerance`, u: rectangular(PRINTED_TOLERANCE * value), means: 'tolerance' });
  return given('constant', value, unit, { ...step, symbol: step.symbol ?? 'A_L' }, { form });
}

const PERMEABILITY = 1650; // what the catalogue's own inductances without a gap imply: 1330 to 1980 over its E cores
const PERMEABILITY_HALF_WIDTH = 500;

/** For a core whose inductance without a gap nobody prints. */
function estimatedUngapped(area: Derived | null, length: Derived | null, part: string): Derived | null {
  if (area === null || length === null) return null;
  const permeability = given(
    'constant',
    PERMEABILITY,
    '1',
    {
      id: `transformer/${part}/permeability`,
      name: 'estimate-permeability',
      symbol: 'μ_e',
      source: cite('core-catalogue', 'implied by inductance, area and length of its E cores, 1330 to 1980', 'reasoned'),
    },
    { form: doubtOf({ id: 'estimate/permeability', u: rectangular(PERMEABILITY_HALF_WIDTH), means: 'estimatedPermeability' }) },
  );
  return derive(ungappedInductance, { permeability, area, length }, `transformer/${part}/core-ungapped`);
}
