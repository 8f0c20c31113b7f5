import { describe, expect, it } from 'vitest';
import { battery, capacitor, inductor, kneeDiode, numberOf, resistor, runCircuit } from './run-circuit.ts';

/** Differences that rounding and the length of a tick (0.47 ns) leave. */
const EXACT = 1e-6;
const close = (found: number, expected: number, share = EXACT): void =>
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(share * Math.abs(expected));

describe('a capacitor charged through a resistor', () => {
  const parts = [battery('V1', 'a', '0', 10, 1), resistor('R1', 'a', 'b', 998), capacitor('C1', 'b', '0', 1e-6, 1)];
  it('follows 1 - exp(-t / RC)', () => {
    for (const t of [1e-5, 3e-4, 1e-3, 5e-3]) {
      const ended = runCircuit(parts, t);
      close(ended.end.states['C1/0']!, 10 * (1 - Math.exp(-ended.reachedS / 1e-3)));
    }
  });
  it('has the mean of that curve, and the charge resistance its rms', () => {
    const result = runCircuit(parts, 2e-3, { current: { ampsInto: 'R1' } });
    const t = result.reachedS;
    close(numberOf(result, 'current').mean, ((10 / 1000) * 1e-3 * (1 - Math.exp(-t / 1e-3))) / t);
    close(numberOf(result, 'current').rms, Math.sqrt((1e-4 * 0.5e-3 * (1 - Math.exp((-2 * t) / 1e-3))) / t));
  });
  it('loses as much in the resistors as it stores, however large they are', () => {
    const { energy } = runCircuit(parts, 0.05);
    close(energy.storedJ, 0.5e-6 * 100);
    close(energy.dissipatedJ, energy.storedJ);
    expect(Math.abs(energy.imbalance)).toBeLessThan(1e-9);
  });
});

describe('an inductor', () => {
  it('takes its current with the time constant L / R', () => {
    const result = runCircuit([battery('V1', 'a', '0', 5, 0.5), inductor('L1', 'a', '0', 10e-3, 0.5)], 7e-3, {
      current: { ampsInto: 'L1' },
    });
    close(numberOf(result, 'current').most, 5 * (1 - Math.exp(-result.reachedS / 10e-3)), 1e-5);
  });
  it('rings with its capacitor at 1 / sqrt(LC), dying by R / 2L', () => {
    const [henries, farads, ohms] = [1e-3, 1e-9, 10];
    const result = runCircuit([inductor('L1', 'a', '0', henries, ohms), capacitor('C1', 'a', '0', farads, 1, 100)], 5e-5);
    const alpha = (ohms + 1) / (2 * henries);
    const omega = Math.sqrt(1 / (henries * farads) - alpha * alpha);
    const t = result.reachedS;
    const expected = 100 * Math.exp(-alpha * t) * (Math.cos(omega * t) + (alpha / omega) * Math.sin(omega * t));
    const LEAKAGE = 3e-3; // volts: every winding has 1 nS across it, which damps a little more
    expect(Math.abs(result.end.states['C1/0']! - expected)).toBeLessThan(LEAKAGE);
  });
  it('carries more beyond saturation, as its two slopes say', () => {
    const parts = [battery('V1', 'a', '0', 10, 1e-6), { ...inductor('L1', 'a', '0', 1e-3, 1e-6), saturation: { amps: 1, share: 0.1 } }];
    const result = runCircuit(parts, 2e-4, { current: { ampsInto: 'L1' } });
    // 1 A after 100 µs, then ten times as steep
    close(numberOf(result, 'current').most, 1 + (10 * (result.reachedS - 1e-4)) / 1e-4, 1e-4);
    expect(result.findings.map(({ code }) => code)).toEqual(['saturated']);
    close(result.energy.deliveredJ, result.energy.storedJ, 1e-4);
  });
});

describe('a transformer', () => {
  const winding = (name: string, pins: readonly [string, string], turns: number) => ({
    name,
    pins,
    turns,
    ohms: 1e-3,
    leakageH: 1e-5 * turns * turns,
  });
  const parts = [
    { kind: 'mains', ref: 'V1', pins: ['a', '0'], rmsV: 230, hertz: 50, phaseDeg: 0, ohms: 1e-3 },
    {
      kind: 'transformer',
      ref: 'T1',
      magnetisingH: 100,
      windings: [winding('first', ['a', '0'], 100), winding('second', ['b', '0'], 10), winding('third', ['0', 'c'], 5)],
    },
    resistor('R1', 'b', '0', 10e3),
    resistor('R2', 'c', '0', 10e3),
  ] as const;
  it('has voltages in the ratio of its turns, and the dot decides the sign', () => {
    const result = runCircuit(parts, 0.02, { b: { volts: ['b', '0'] }, c: { volts: ['c', '0'] }, sum: { volts: ['b', 'c'] } });
    // the first winding's leakage, 0.1 H, keeps its share of the voltage from the core of 100 H
    const reaches = 100 / 100.1;
    const LEFT = 1e-5; // what the loads of the other windings do through their leakage, and rounding beside 100 H
    close(numberOf(result, 'b').rms, 23 * reaches, LEFT);
    close(numberOf(result, 'c').rms, 11.5 * reaches, LEFT);
    close(numberOf(result, 'sum').rms, 34.5 * reaches, LEFT);
  });
});

describe('a half-wave rectifier', () => {
  const mains = { kind: 'mains', ref: 'V1', pins: ['a', '0'], rmsV: 230, hertz: 50, phaseDeg: 0, ohms: 0.01 } as const;
  const [knee, ohms, load] = [0.7, 0.1, 1000];
  it('delivers the mean of the half sine above its knee', () => {
    const result = runCircuit([mains, kneeDiode('D1', 'a', 'b', knee, ohms), resistor('R1', 'b', '0', load)], 0.04, {
      out: { volts: ['b', '0'] },
    });
    const crest = 230 * Math.SQRT2;
    const from = Math.asin(knee / crest);
    const share = load / (load + ohms + 0.01);
    // 1/2π ∫ (crest sin x - knee) dx between the crossings
    const expected = (share * (2 * crest * Math.cos(from) - knee * (Math.PI - 2 * from))) / (2 * Math.PI);
    close(numberOf(result, 'out').mean, expected, 1e-5);
    close(numberOf(result, 'out').most, share * (crest - knee), 1e-4);
  });
  it('holds its capacitor near the crest, less what the load takes until the next one', () => {
    const parts = [
      mains,
      kneeDiode('D1', 'a', 'b', knee, ohms),
      resistor('R1', 'b', '0', 10e3),
      capacitor('C1', 'b', '0', 47e-6, 0.1, 320),
    ];
    const { most, least } = numberOf(runCircuit(parts, 0.2, { out: { volts: ['b', '0'] } }, { fromS: 0.1 }), 'out');
    // I T / C bounds the fall over one period
    expect(most - least).toBeLessThan((most / 10e3) * 0.02 * (1 / 47e-6));
    expect(most - least).toBeGreaterThan(0.7 * (most / 10e3) * 0.02 * (1 / 47e-6));
  });
});

describe('a fuse', () => {
  const parts = (volts: number) => [
    battery('V1', 'a', '0', volts, 0.1),
    { kind: 'fuse', ref: 'F1', pins: ['a', 'b'], ohms: 0.1, meltingA2s: 1, holdingA: 2 } as const,
    resistor('R1', 'b', '0', 0.8),
  ];
  it('opens when i² t reaches its melting integral', () => {
    const { findings } = runCircuit(parts(10), 0.05);
    // 100 A² less 4 per second of what is there: 25 (1 - exp(-4 t)) = 1 after 10.2 ms
    expect(findings[0]).toMatchObject({ code: 'fuseOpened', ref: 'F1' });
    expect(findings[0]!.atS).toBeGreaterThan(0.01);
    expect(findings[0]!.atS).toBeLessThan(0.01025);
  });
  it('carries its holding current for ever', () => expect(runCircuit(parts(1.99), 5).findings).toEqual([]));
});

describe('a thermistor', () => {
  it('settles where its heat leaves it', () => {
    const part = { kind: 'thermistor', ref: 'N1', pins: ['a', 'b'], ohms25: 10, betaK: 3000, heatJPerK: 0.01, lossWPerK: 0.01 } as const;
    const result = runCircuit([battery('V1', 'a', '0', 10, 0.1), part, resistor('R1', 'b', '0', 20)], 20, {}, { fromS: 15 });
    const watts = result.lossW['N1']!;
    const kelvin = 298.15 + watts / 0.01;
    const amps = Math.sqrt(result.lossW['R1']! / 20);
    // its resistance stands within one step of the ladder, a tenth, of the law
    close(watts / (amps * amps), 10 * Math.exp(3000 * (1 / kelvin - 1 / 298.15)), 0.11);
    expect(watts / (amps * amps)).toBeLessThan(8);
  });
});

describe('the body network of IEC 60990, figure 4', () => {
  const weight = (hertz: number): number => {
    const result = runCircuit(
      [
        { kind: 'mains', ref: 'V1', pins: ['a', '0'], rmsV: 10, hertz, phaseDeg: 0, ohms: 1e-3 },
        { kind: 'bodyNetwork', ref: 'B1', pins: ['a', '0'] },
      ],
      60 / hertz,
      { touch: { touchOf: 'B1' } },
      { fromS: 50 / hertz },
    );
    return numberOf(result, 'touch').rms / 10;
  };
  /** Input impedance in ohm and weight U2 / (500 ohm I), computed from the published components by complex arithmetic. */
  it.each([
    [50, 1990, 0.9974],
    [1000, 972.5, 0.5674],
    [100_000, 476.3, 0.0069],
  ])('reads the weighted current at %d Hz', (hertz, ohms, factor) => close(weight(hertz) * ohms, factor, 0.01));
});
