import { describe, expect, it } from 'vitest';
import { selfOscillating } from '../../bench/solver/self-oscillating.ts';
import { numberOf, runCircuit } from './run-circuit.ts';

const WINDOW = { from: 2e-3, to: 4e-3 } as const;

/** Loaded until its current limit decides, without any controller: how often the collector swings from below 20 V to above 300 V. */
function run(primaryH: number) {
  const { circuit } = selfOscillating({ primaryH, loadOhms: 5 });
  const probes = {
    collector: { volts: ['collector', 'common'] },
    out: { volts: ['out', 'zero'] },
    primary: { ampsInto: 'T1', winding: 'primary' },
  } as const;
  const result = runCircuit(circuit.parts, WINDOW.to, probes, {
    circuit,
    fromS: WINDOW.from,
    waveform: { spacingS: 1e-7, fromS: WINDOW.from },
  });
  const rises: number[] = [];
  let low = false;
  result.waveform!.values[0]!.forEach((volts, index) => {
    if (volts < 20) low = true;
    if (!low || volts < 300) return;
    rises.push(result.waveform!.timeS[index]!);
    low = false;
  });
  return { hertz: (rises.length - 1) / (rises.at(-1)! - rises[0]!), result };
}

describe('a converter of two transistors and no controller', () => {
  const [one, twice] = [run(2.4e-3), run(4.8e-3)];
  it('oscillates by itself and carries its load', () => {
    expect(one.hertz).toBeGreaterThan(20e3);
    expect(numberOf(one.result, 'out').mean).toBeGreaterThan(3);
    expect(one.result.energy.balanced).toBe(true);
  });
  it('runs at half the frequency with twice the inductance, but for its delays', () => {
    const HALVED = 0.1; // transistor and ring do not grow with the inductance
    expect(Math.abs(twice.hertz / (one.hertz / 2) - 1)).toBeLessThan(HALVED);
  });
  it('ends each stroke where its sense resistor turns the second transistor on', () => {
    // 0.68 V over 4.7 ohm, plus what the storage time adds, less the base current that flows there too
    const most = numberOf(one.result, 'primary').most;
    expect(most).toBeGreaterThan(0.1);
    expect(most).toBeLessThan(0.68 / 4.7 + (325 / 2.4e-3) * 0.8e-6);
  });
});
