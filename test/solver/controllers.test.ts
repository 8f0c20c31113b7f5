import { describe, expect, it } from 'vitest';
import { INPUT_V, idealFlyback, PEAK, PRIMARY_H } from './controlled.ts';
import { capacitor, numberOf, resistor, runCircuit } from './run-circuit.ts';

const share = (found: number, expected: number): number => Math.abs(found - expected) / Math.abs(expected);
const OUT = { out: { volts: ['out', '0'] } } as const;

describe('a flyback converter that loses next to nothing', () => {
  /** Energy per pulse ½ L I², 50 000 times a second: 0.1 V over 0.1 ohm is 1 A, so 25 W. */
  const result = runCircuit(
    idealFlyback({ law: PEAK, loadOhms: 4, outputV: 10 }),
    10e-3,
    { ...OUT, primary: { ampsInto: 'T1', winding: 'primary' } },
    { fromS: 8e-3 },
  );
  const expectedW = 0.5 * PRIMARY_H * 1 * 50e3;

  it('takes ½ L I² at each pulse', () => expect(share(result.sourceW['V1']!, expectedW)).toBeLessThan(0.01));
  it('gives it to the load, so that the output is sqrt(P R)', () =>
    expect(share(numberOf(result, 'out').rms, Math.sqrt(expectedW * 4))).toBeLessThan(0.02));
  it('ends each pulse at the limit, late by less than the comparator is allowed', () => {
    expect(share(numberOf(result, 'primary').most, 1)).toBeLessThan(0.005);
    const { pulses, limited } = result.controllers['U1']!;
    expect(limited).toBe(pulses);
    expect(Math.abs(pulses - 10e-3 * 50e3)).toBeLessThanOrEqual(1);
  });
  it('overshoots by slope times delay', () => {
    const late = runCircuit(idealFlyback({ law: { ...PEAK, delayS: 500e-9 }, loadOhms: 4, outputV: 10 }), 2e-3, {
      primary: { ampsInto: 'T1', winding: 'primary' },
    });
    expect(share(numberOf(late, 'primary').most, 1 + (INPUT_V / PRIMARY_H) * 500e-9)).toBeLessThan(0.005);
  });
});

describe('a fixed-frequency controller', () => {
  it('ends a pulse at the longest duty when the current is never reached', () => {
    const law = { ...PEAK, limitV: 1, leastV: 0.9 };
    const { controllers, probes } = runCircuit(idealFlyback({ law, loadOhms: 4, outputV: 15 }), 1e-3, {
      primary: { ampsInto: 'T1', winding: 'primary' },
    });
    expect(controllers['U1']!.limited).toBe(0);
    // 12 µs at 100 V into 1 mH, from no current
    expect((probes['primary'] as { most: number }).most).toBeGreaterThan(1.19);
  });

  it('gives no pulse while its feedback is below the burst line', () => {
    const { controllers } = runCircuit(idealFlyback({ law: PEAK, loadOhms: 4, outputV: 10, feedbackV: 0.001 }), 1e-3);
    expect(controllers['U1']!.pulses).toBe(0);
  });

  it('follows its feedback between the least and the limit', () => {
    const peak = (feedbackV: number): number =>
      numberOf(
        runCircuit(idealFlyback({ law: PEAK, loadOhms: 4, outputV: 10, feedbackV }), 1e-3, { p: { ampsInto: 'T1', winding: 'primary' } }),
        'p',
      ).most;
    expect(share(peak(0.05), 0.5)).toBeLessThan(0.01);
    expect(share(peak(0.0061), 0.1)).toBeLessThan(0.05);
    expect(share(peak(3), 1)).toBeLessThan(0.01);
  });

  it('trips on a high supply and stays off when it latches', () => {
    const lockout = { startV: 12, stopV: 8, idleA: 0, runningA: 1e-3, overvoltage: { volts: 20, after: 'latch' } } as const;
    const supply = [
      capacitor('C3', 'supply', '0', 1e-6, 0.1, 13),
      { kind: 'dcSource', ref: 'V2', pins: ['high', '0'], volts: 40, ohms: 1 } as const,
      resistor('R4', 'high', 'supply', 1e3),
    ];
    const { controllers, reachedS } = runCircuit(idealFlyback({ law: PEAK, loadOhms: 4, outputV: 10, lockout, supply }), 5e-3);
    expect(controllers['U1']).toMatchObject({ latched: true, running: false });
    // the supply needs 1 ms (40 + ... 1 µF) ln(27 / 20) to reach the trip
    expect(controllers['U1']!.pulses).toBeLessThan(0.2 * reachedS * 50e3);
  });

  it('hiccups on a supply that cannot carry it: charge time and hold time as RC and I say', () => {
    const lockout = { startV: 12, stopV: 8, idleA: 0, runningA: 2e-3 };
    const supply = [
      capacitor('C3', 'supply', '0', 1e-6, 0.1, 0),
      { kind: 'dcSource', ref: 'V2', pins: ['high', '0'], volts: 100, ohms: 1 } as const,
      resistor('R4', 'high', 'supply', 100e3),
    ];
    const { controllers, effort } = runCircuit(idealFlyback({ law: PEAK, loadOhms: 4, outputV: 10, lockout, supply }), 0.05);
    const firstStart = -0.1 * Math.log(1 - 12 / 100);
    // falling 4 V at 2 mA less what the resistor still gives; rising 4 V through the resistor
    const fall = 4e-6 / (2e-3 - 90 / 100e3);
    const rise = 0.1 * Math.log((100 - 8) / (100 - 12));
    const expected = 1 + Math.floor((0.05 - firstStart) / (fall + rise));
    expect(Math.abs(controllers['U1']!.starts - expected)).toBeLessThanOrEqual(1);
    expect(controllers['U1']!.starts).toBeGreaterThan(3);
    expect(effort.steps).toBeLessThan(1e6);
  });

  it('gives up an overload after its time and tries again when its supply has been down', () => {
    const law = { ...PEAK, overload: { volts: 4, seconds: 2e-3, after: 'latch' } } as const;
    const { controllers } = runCircuit(idealFlyback({ law, loadOhms: 4, outputV: 10, feedbackV: 5 }), 5e-3);
    expect(controllers['U1']).toMatchObject({ latched: true, running: false });
    expect(Math.abs(controllers['U1']!.pulses - 2e-3 * 50e3)).toBeLessThanOrEqual(2);
  });
});

describe('a valley-switching controller', () => {
  const law = {
    type: 'valley',
    sense: 'sense',
    limitV: 0.1,
    blankS: 200e-9,
    delayS: 0,
    feedback: 'feedback',
    offsetV: 0,
    divider: 1,
    leastV: 0.01,
    burst: { stopV: 0.005, goV: 0.006 },
    auxiliary: 'aux',
    onMostS: 40e-6,
    offLeastS: 3e-6,
    offMostS: 100e-6,
    valleyDelayS: 200e-9,
  } as const;
  it('has the period of charge, discharge and half a ring', () => {
    const parts = [...idealFlyback({ law, loadOhms: 5, outputV: 10 }), capacitor('C10', 'drain', '0', 80e-12, 1)];
    const { controllers, reachedS, probes } = runCircuit(parts, 4e-3, { out: { volts: ['out', '0'] } });
    const out = (probes['out'] as { mean: number }).mean;
    // 1 A in 1 mH at 100 V; out of it at ten times the output; half a period of 1 mH with 100 pF
    const expected = 10e-6 + PRIMARY_H / (10 * out) + Math.PI * Math.sqrt(PRIMARY_H * 100e-12);
    expect(share(reachedS / controllers['U1']!.pulses, expected)).toBeLessThan(0.02);
  });
});

describe('a controller that regulates from the primary side', () => {
  const law = {
    type: 'primarySide',
    sense: 'sense',
    limitV: 0.1,
    blankS: 300e-9,
    delayS: 0,
    auxiliary: 'aux',
    kneeV: 20,
    sampleAt: 0.8,
    hertzMost: 60e3,
    hertzLeast: 1e3,
    onMostS: 30e-6,
    leastShare: 0.3,
    gainPerV: 0.05,
    stepPerV: 0.005,
    conductionMost: 0.5,
  } as const;
  const run = (loadOhms: number, outputV: number) =>
    runCircuit(idealFlyback({ law, loadOhms, outputV }), 30e-3, OUT, { fromS: 20e-3, accuracy: 'screening' });

  it('holds the output at its knee voltage over the turns ratio', () => {
    for (const loadOhms of [10, 60]) expect(share(numberOf(run(loadOhms, 10), 'out').mean, 10)).toBeLessThan(0.03);
  });
  it('limits the output current to half the secondary peak times the conduction share', () => {
    // peak 1 A on the primary, 10 A on the secondary, conducting half of the time: 2.5 A
    const out = numberOf(run(2, 5), 'out').mean;
    expect(share(out / 2, 2.5)).toBeLessThan(0.03);
  });
});
