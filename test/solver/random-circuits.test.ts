import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/core/solver/circuit.ts';
import { SEED } from '../property/seed.ts';
import { battery, capacitor, inductor, kneeDiode, resistor, runCircuit } from './run-circuit.ts';

const NETS = ['0', 'a', 'b', 'c', 'd'];
const pins = fc.uniqueArray(fc.constantFrom(...NETS), { minLength: 2, maxLength: 2 }) as fc.Arbitrary<[string, string]>;
const decades = (from: number, to: number): fc.Arbitrary<number> =>
  fc.double({ min: Math.log(from), max: Math.log(to), noNaN: true }).map((value) => Math.exp(value));

const linear = fc.oneof(
  fc.tuple(pins, decades(1, 1e5)).map(
    ([[a, b], ohms]) =>
      (ref: string): Part =>
        resistor(ref, a, b, ohms),
  ),
  fc.tuple(pins, decades(1e-10, 1e-5)).map(
    ([[a, b], farads]) =>
      (ref: string): Part =>
        capacitor(ref, a, b, farads, 0.5),
  ),
  fc.tuple(pins, decades(1e-6, 1e-2)).map(
    ([[a, b], henries]) =>
      (ref: string): Part =>
        inductor(ref, a, b, henries, 0.5),
  ),
);
const any = fc.oneof(
  linear,
  pins.map(
    ([a, b]) =>
      (ref: string): Part =>
        kneeDiode(ref, a, b, 0.7, 0.5),
  ),
);
const named = (makers: readonly ((ref: string) => Part)[]): Part[] => makers.map((make, index) => make(`P${index}`));
/** So that every net is somewhere. */
const grounded = NETS.slice(1).map((net, index) => resistor(`G${index}`, net, '0', 1e4));

const linearCircuit = fc.array(linear, { minLength: 3, maxLength: 10 }).map(named);
const anyCircuit = fc.array(any, { minLength: 3, maxLength: 12 }).map(named);
const RUN = { seed: SEED, numRuns: 60 };

describe('any circuit', () => {
  it('keeps its energy account to a millionth, or says how it ended', () => {
    fc.assert(
      fc.property(anyCircuit, fc.double({ min: 1, max: 300, noNaN: true }), (parts, volts) => {
        const result = runCircuit([battery('V1', 'a', '0', volts, 1), ...grounded, ...parts], 1e-3);
        expect(result.outcome).toBe('completed');
        expect(Math.abs(result.energy.imbalance)).toBeLessThan(1e-6);
      }),
      RUN,
    );
  });

  it('never makes heat of less than nothing', () => {
    fc.assert(
      fc.property(anyCircuit, (parts) => {
        const { lossW } = runCircuit([battery('V1', 'a', '0', 50, 1), ...grounded, ...parts], 1e-3);
        for (const watts of Object.values(lossW)) expect(watts).toBeGreaterThan(-1e-6);
      }),
      RUN,
    );
  });
});

describe('a linear circuit without history', () => {
  it('is reciprocal: source and ammeter may change places', () => {
    fc.assert(
      fc.property(linearCircuit, (parts) => {
        const current = (from: string, at: string): number => {
          // the ammeter is a source of no volts
          const result = runCircuit([battery('V1', from, '0', 10, 1), battery('V2', at, '0', 0, 1), ...grounded, ...parts], 2 ** -12, {
            through: { ampsInto: 'V2' },
          });
          const probe = result.probes['through']!;
          return 'mean' in probe ? probe.mean : Number.NaN;
        };
        const [one, other] = [current('a', 'b'), current('b', 'a')];
        expect(Math.abs(one - other)).toBeLessThan(1e-6 * Math.max(Math.abs(one), Math.abs(other)) + 1e-12);
      }),
      RUN,
    );
  });

  it('answers twice the source with twice the response', () => {
    fc.assert(
      fc.property(linearCircuit, (parts) => {
        const final = (volts: number) => runCircuit([battery('V1', 'a', '0', volts, 1), ...grounded, ...parts], 2 ** -12).end.states;
        const [once, twice] = [final(5), final(10)];
        for (const [name, value] of Object.entries(once))
          expect(Math.abs(twice[name]! - 2 * value)).toBeLessThan(1e-9 + 1e-7 * Math.abs(value));
      }),
      RUN,
    );
  });
});
