import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { coreLoss } from '../../formula/magnetics/core-loss.ts';
import { triangleCoefficient } from '../../formula/magnetics/triangle-coefficient.ts';
import { triangle } from '../../table/ferrite-loss/2023/triangle.ts';
import { findCell } from '../../table/look-up.ts';
import { steinmetz } from '../../table/planar-notes/undated/steinmetz.ts';
import type { Derived } from '../../trace/derived.ts';
import { findRead } from '../bench/open-value.ts';
import type { OperatingPoint } from './converter-facts.ts';
import { type CoreValues, coreKey } from './core-values.ts';

interface Coefficients {
  readonly coefficient: Derived;
  readonly alpha: Derived;
  readonly beta: Derived;
}

/** How a ferrite loses under a triangle: as measured, else from what its maker prints for a sine; null where neither is published. */
function coefficientsOf(ferrite: string | null, id: string): Coefficients | null {
  const key = coreKey(ferrite ?? '');
  const measured = (column: 'coefficient' | 'alpha' | 'beta', symbol: string): Derived =>
    findCell(triangle, key, column, `${id}/loss-${column}`, symbol)!;
  if (triangle.rows.some(([name]) => name === key))
    return { coefficient: measured('coefficient', 'k_i'), alpha: measured('alpha', 'α'), beta: measured('beta', 'β') };
  if (!steinmetz.rows.some(([name]) => name === key)) return null;
  const sine = (column: 'coefficient' | 'alpha' | 'beta', symbol: string): Derived =>
    findCell(steinmetz, key, column, `${id}/sine-${column}`, symbol)!;
  const [alpha, beta] = [sine('alpha', 'α'), sine('beta', 'β')];
  return {
    coefficient: derive(triangleCoefficient, { coefficient: sine('coefficient', 'C_m'), alpha, beta }, `${id}/loss-coefficient`),
    alpha,
    beta,
  };
}

export function isFerriteKnown(exhibit: ExhibitOf<'stack'>): boolean {
  return coefficientsOf(findRead(exhibit.ferrite), `transformer/${exhibit.part}`) !== null;
}

/** Loss of the core where its flux rises from nothing; a continuous stroke swings less than its peak, and its swing is not worked out. */
export function lossOfCore(
  exhibit: ExhibitOf<'stack'>,
  { area, length }: CoreValues,
  flux: Derived | null,
  at: OperatingPoint | null,
): Derived | null {
  const id = `transformer/${exhibit.part}`;
  const coefficients = coefficientsOf(findRead(exhibit.ferrite), id);
  if (at === null || coefficients === null || area === null || length === null || flux === null || at.rise !== null) return null;
  return derive(
    coreLoss,
    { area, length, ...coefficients, swing: flux, frequency: at.frequency, rise: at.on, fall: at.off },
    `${id}/core-loss`,
  );
}
