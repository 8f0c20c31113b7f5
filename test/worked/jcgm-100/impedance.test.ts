import { describe, expect, it } from 'vitest';
import { combine } from '../../../src/core/trace/combine.ts';
import { type Derived, doubtOf, given, uncertainty } from '../../../src/core/trace/derived.ts';
import { covarianceOf, type Leaf } from '../../../src/core/trace/leaf.ts';
import { IMPEDANCE, IMPEDANCE_PRINTED } from './h2.ts';

const { VI, Vphi, Iphi } = IMPEDANCE.correlations;
const PARTNERS = {
  V: new Map([
    ['I', VI],
    ['phi', Vphi],
  ]),
  I: new Map([
    ['V', VI],
    ['phi', Iphi],
  ]),
  phi: new Map([
    ['V', Vphi],
    ['I', Iphi],
  ]),
} as const;
type Name = 'V' | 'I' | 'phi';

function inputs(correlated: boolean): Record<Name, Derived> {
  const one = (id: Name): Derived => {
    const leaf: Leaf = { id, u: IMPEDANCE[id].u, means: id, ...(correlated ? { correlated: PARTNERS[id] } : {}) };
    return given('reading', IMPEDANCE[id].value, '1', { id, name: id }, { form: doubtOf(leaf) });
  };
  return { V: one('V'), I: one('I'), phi: one('phi') };
}

function results(correlated: boolean): Record<'R' | 'X' | 'Z', Derived> {
  const given = inputs(correlated);
  const from = (id: string, compute: (plain: Readonly<Record<Name, number>>) => number): Derived =>
    combine<Name>({ kind: 'formula', unit: '1', formula: null, symbols: { V: 'V', I: 'I', phi: 'φ' }, compute }, given, { id, name: id });
  return {
    R: from('R', ({ V, I, phi }) => (V / I) * Math.cos(phi)),
    X: from('X', ({ V, I, phi }) => (V / I) * Math.sin(phi)),
    Z: from('Z', ({ V, I }) => V / I),
  };
}

const known = (one: Derived): number => uncertainty(one) ?? Number.NaN;
const correlation = (one: Derived, two: Derived): number => (covarianceOf(one.form, two.form) ?? Number.NaN) / (known(one) * known(two));

describe('the impedance of JCGM 100, H.2', () => {
  const found = results(true);

  it.each(['R', 'X', 'Z'] as const)('has the printed %s and its printed uncertainty', (name) => {
    const printed = IMPEDANCE_PRINTED[name];
    expect(Math.abs(found[name].value - printed.value)).toBeLessThanOrEqual(printed.valueTolerance);
    expect(Math.abs(known(found[name]) - printed.u)).toBeLessThanOrEqual(printed.uTolerance);
  });

  it('has the printed correlations between its results', () => {
    const { RX, RZ, XZ } = IMPEDANCE_PRINTED.correlations;
    const half = 0.005 + 0.003; // half of the last printed digit, and what rounded input correlations leave open
    expect(Math.abs(correlation(found.R, found.X) - RX)).toBeLessThanOrEqual(half);
    expect(Math.abs(correlation(found.R, found.Z) - RZ)).toBeLessThanOrEqual(half);
    expect(Math.abs(correlation(found.X, found.Z) - XZ)).toBeLessThanOrEqual(half);
  });

  it('would be stated wrongly if the readings were taken as independent', () => {
    const independent = results(false);
    expect(Math.abs(known(independent.R) - IMPEDANCE_PRINTED.R.u)).toBeGreaterThan(IMPEDANCE_PRINTED.R.uTolerance);
    expect(Math.abs(known(independent.X) - IMPEDANCE_PRINTED.X.u)).toBeGreaterThan(IMPEDANCE_PRINTED.X.uTolerance);
  });

  it('satisfies R² + X² = Z², so a combination of all three that must be zero has no uncertainty', () => {
    const { R, X, Z } = found;
    const rest = combine(
      { kind: 'formula', unit: '1', formula: null, symbols: { R: 'R', X: 'X', Z: 'Z' }, compute: (p) => p.R * p.R + p.X * p.X - p.Z * p.Z },
      { R, X, Z },
      { id: 'rest', name: 'rest' },
    );
    expect(Math.abs(rest.value)).toBeLessThan(1e-9 * Z.value ** 2);
    expect(known(rest)).toBeLessThan(1e-4 * 2 * Z.value * known(Z));
  });
});
