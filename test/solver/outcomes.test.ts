import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/core/solver/circuit.ts';
import { accountOf } from '../../src/core/solver/energy-balance.ts';
import { junctionPoints } from '../../src/core/solver/segment-curve.ts';
import { settle } from '../../src/core/solver/settle.ts';
import type { Topologies, Topology } from '../../src/core/solver/topology.ts';
import type { Watch } from '../../src/core/solver/watch.ts';
import { tableOf } from '../../src/core/solver/watch-table.ts';
import { battery, numberOf, resistor, runCircuit } from './run-circuit.ts';

describe('an energy account', () => {
  const account = (deliveredJ: number, dissipatedJ: number, storedJ: number) =>
    accountOf({ sourceJ: new Map([['V1', deliveredJ]]), lossJ: new Map([['R1', dissipatedJ]]), probes: [] }, storedJ);

  it('that misses less than one part in a hundred balances', () => expect(account(1, 0.6, 0.391)).toMatchObject({ balanced: true }));
  it('that misses more says so', () => {
    const { balanced, imbalance } = account(1, 0.6, 0.385);
    expect(balanced).toBe(false);
    expect(imbalance).toBeCloseTo(0.015, 9);
  });
});

describe('regions that never come to rest', () => {
  /** Two topologies, each of which wants to become the other whatever the voltages are. */
  const between = (from: number): Topology => {
    const watches: Watch[] = [{ row: 0, sign: 1, offset: 1, device: 0, to: 1 - from }];
    return { watches, table: tableOf(watches, () => 0, 0) } as unknown as Topology;
  };
  const two = [between(0), between(1)] as const;
  const topologies = { after: (_: Topology, __: number, to: number) => two[to] } as unknown as Topologies;

  it('are given up after a few hundred changes: no state rather than any', () => {
    let changes = 0;
    const found = settle(
      topologies,
      two[0],
      new Uint8Array(1),
      new Float64Array(1),
      () => undefined,
      () => {
        changes += 1;
      },
    );
    expect(found).toBeNull();
    expect(changes).toBeLessThan(1000);
  });
});

describe('a transistor whose junction follows its charge', () => {
  const law = { saturationA: 1e-13, ideality: 1, seriesOhms: 0 };
  const GAIN = 20;
  const transistor = (baseA: number): Part[] => [
    battery('V1', 'rail', '0', 10, 0.1),
    resistor('R1', 'rail', 'c', 5),
    // as good as a current into the base
    battery('V2', 'drive', '0', 1000, 1),
    resistor('R2', 'drive', 'b', 1000 / baseA),
    {
      kind: 'bipolar',
      ref: 'Q1',
      collector: 'c',
      base: 'b',
      emitter: '0',
      gain: GAIN,
      transitS: 40e-9,
      baseV: 0.73,
      baseOhms: 0.5,
      baseCurve: junctionPoints(law, [0.5e-3, 5e-3, 50e-3, 0.3]),
      saturationV: 0.05,
      saturationOhms: 0.3,
      collectorF: 2e-12,
      baseF: 200e-12,
      baseBreakdownV: 9,
      breakdown: { volts: 500, ohms: 50 },
    },
  ];
  it.each([0.1e-3, 1e-3, 5e-3])('carries gain times %f A at the voltage of the exponential law, within a chord', (baseA) => {
    const result = runCircuit(transistor(baseA), 100e-6, { base: { volts: ['b', '0'] }, collector: { ampsInto: 'R1' } }, { fromS: 90e-6 });
    const carried = GAIN * baseA;
    expect(numberOf(result, 'collector').mean / carried).toBeCloseTo(1, 2);
    const [[, volts] = [0, 0]] = junctionPoints(law, [carried]);
    const CHORD_V = 0.025; // a chord over one decade hangs below the logarithm by up to 0.6 times 26 mV
    expect(Math.abs(numberOf(result, 'base').mean - (volts + 0.5 * baseA))).toBeLessThan(CHORD_V);
  });
});
