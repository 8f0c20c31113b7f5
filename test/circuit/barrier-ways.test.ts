import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Circuit, CircuitSide } from '../../src/core/circuit/circuit.ts';
import { barrierWays } from '../../src/core/circuit/path/barrier-ways.ts';
import { spreadSides } from '../../src/core/circuit/path/spread-sides.ts';
import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { toCircuit } from '../../src/core/circuit/trace/to-circuit.ts';
import { FEW, SEED } from '../property/seed.ts';

const NETS = ['m1', 'm2', 'f1', 'f2', 'f3', 'o1', 'e1'] as const;
const SIDES: Readonly<Record<string, CircuitSide>> = {
  m1: 'mains',
  m2: 'mains',
  f1: 'floating',
  f2: 'floating',
  f3: 'floating',
  o1: 'output',
  e1: 'earth',
};
const MOST_PARTS = 6;

const circuitArbitrary: fc.Arbitrary<Circuit> = fc
  .array(fc.uniqueArray(fc.constantFrom(...NETS), { minLength: 2, maxLength: 3 }), { maxLength: MOST_PARTS })
  .map((parts) => ({
    parts: parts.map((nets, index) => ({
      id: `p${index}`,
      ref: `P${index}`,
      kind: 'capacitor',
      pins: nets.map((net, pin) => ({ pin: String(pin), net })),
    })),
    nets: NETS.map((id) => ({ id, name: id, side: SIDES[id]! })),
  }));

/** All rows of different parts with all rows of different nets, each tried against the definition: slow and plain. */
function bruteForce({ parts }: Circuit): string[] {
  const found: string[] = [];
  const rows = <T>(items: readonly T[], length: number): T[][] =>
    length === 0
      ? [[]]
      : items.flatMap((item) =>
          rows(
            items.filter((other) => other !== item),
            length - 1,
          ).map((row) => [item, ...row]),
        );
  const floating = NETS.filter((net) => SIDES[net] === 'floating');
  for (let length = 1; length <= Math.min(parts.length, floating.length + 1); length += 1)
    for (const row of rows(parts, length))
      for (const middle of rows(floating, length - 1))
        for (const from of ['m1', 'm2'])
          for (const to of ['o1', 'e1']) {
            const nets = [from, ...middle, to];
            const joins = row.every(({ pins }, index) =>
              [nets[index], nets[index + 1]].every((net) => pins.some((pin) => pin.net === net)),
            );
            if (joins) found.push(`${row.map(({ id }) => id).join('+')}: ${nets.join(' ')}`);
          }
  return found.sort();
}

describe('every way across the barrier through parts', () => {
  it('is what trying every row of parts and nets finds', () => {
    fc.assert(
      fc.property(circuitArbitrary, (circuit) => {
        const ways = barrierWays(circuit, new Map(Object.entries(SIDES)));
        expect(ways.map(({ parts, nets }) => `${parts.join('+')}: ${nets.join(' ')}`).sort()).toEqual(bruteForce(circuit));
      }),
      { seed: SEED, numRuns: FEW },
    );
  });
});

describe('the side of a net follows from the parts', () => {
  const sidesOf = (lines: string) => {
    const { circuit, crossing } = toCircuit(parseTrace(lines).trace);
    return spreadSides(circuit, crossing);
  };
  it('through everything that is not made to cross, and never through a transformer, an optocoupler or a marked part', () => {
    const { of, straddling } = sidesOf(
      'mains: L\noutput: OUT-\nR1 1k: L, A\nT1 P: A, B\nT1 S: C, OUT-\nD1: C, D\nU2 (optocoupler): A=D, K=E, C=F, E=B\nC1 1nF !: A, OUT-\nR2 1k: X, Y',
    );
    expect(Object.fromEntries(of)).toEqual({
      l: 'mains',
      a: 'mains',
      b: 'mains',
      f: 'mains',
      c: 'output',
      d: 'output',
      e: 'output',
      'out-minus': 'output',
    });
    expect(straddling).toEqual([]);
  });
  it('a part that joins two sides without being marked is named', () => {
    expect(sidesOf('mains: L\noutput: OUT-\nR1 1M: L, OUT-').straddling).toEqual([{ part: 'r1', between: ['l', 'out-minus'] }]);
  });
});
