import { describe, expect, it } from 'vitest';
import { adapter } from '../../bench/solver/adapter.ts';
import { junctionPoints } from '../../src/core/solver/segment-curve.ts';
import { battery, numberOf, resistor, runCircuit } from './run-circuit.ts';

const LAW = { saturationA: 7.02e-9, ideality: 1.8, seriesOhms: 0.034 };

/** Current of a source through a resistor and an exponential junction, by bisection on the diode equation. */
function junctionCurrent(volts: number, ohms: number): number {
  let [low, high] = [0, volts / ohms];
  for (let turn = 0; turn < 80; turn += 1) {
    const amps = (low + high) / 2;
    const drop = LAW.ideality * 0.025852 * Math.log(1 + amps / LAW.saturationA) + amps * (LAW.seriesOhms + ohms);
    if (drop > volts) high = amps;
    else low = amps;
  }
  return low;
}

/** Worst error in the current over a decade of source voltages, as a share, with so many points on the curve. */
function worstError(points: number): number {
  const amps = Array.from({ length: points }, (_, index) => 2 * Math.exp((-Math.log(1000) * (points - 1 - index)) / (points - 1)));
  const forward = junctionPoints(LAW, amps);
  const errors = [1, 1.5, 2, 3, 5].map((volts) => {
    const parts = [
      battery('V1', 'a', '0', volts, 1),
      { kind: 'diode', ref: 'D1', pins: ['a', 'b'], forward } as const,
      resistor('R1', 'b', '0', 4),
    ];
    const found = numberOf(runCircuit(parts, 1e-5, { i: { ampsInto: 'R1' } }, { fromS: 0.5e-5 }), 'i').mean;
    const exact = junctionCurrent(volts, 5);
    return Math.abs(found - exact) / exact;
  });
  return Math.max(...errors);
}

describe('refinement', () => {
  it('of a diode curve brings it to the exponential law, about four times closer for half the chord', () => {
    const errors = [3, 5, 9].map(worstError);
    expect(errors[1]!).toBeLessThan(errors[0]! / 2);
    expect(errors[2]!).toBeLessThan(errors[1]! / 2);
    expect(errors[2]!).toBeLessThan(0.01);
  });

  it('of the steps moves no result of the adapter by more than a part in a thousand', () => {
    const { circuit } = adapter();
    const probes = { out: { volts: ['out', 'zero'] }, drain: { volts: ['drain', 'common'] } } as const;
    const [coarse, fine] = (['screening', 'report'] as const).map((accuracy) =>
      runCircuit(circuit.parts, 6e-3, probes, { circuit, accuracy, fromS: 4e-3 }),
    );
    const share = (a: number, b: number): number => Math.abs(a / b - 1);
    expect(share(coarse!.sourceW['V1']!, fine!.sourceW['V1']!)).toBeLessThan(1e-3);
    expect(share(numberOf(coarse!, 'out').mean, numberOf(fine!, 'out').mean)).toBeLessThan(1e-3);
    expect(share(numberOf(coarse!, 'drain').most, numberOf(fine!, 'drain').most)).toBeLessThan(1e-3);
  });
});
