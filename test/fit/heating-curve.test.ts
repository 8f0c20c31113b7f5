import { describe, expect, it } from 'vitest';
import { binReadings } from '../../src/core/fit/bin-readings.ts';
import { fitShape } from '../../src/core/fit/fit-shape.ts';
import type { heatingCurve } from '../../src/core/fit/heating-curve.ts';
import { body, fitOf, logOf, ROOM_K } from './seeded-soak.ts';

const HOUR = 3600;
const outputOf = (found: ReturnType<typeof heatingCurve>, name: string): number =>
  found.fit?.outputs.find((output) => output.name === name)?.value ?? Number.NaN;

/*
 * Synthetic truths: of 500 trials with a 95 % interval, 458 to 489 hold the truth with a probability of 0.998 (binomial, n = 500, p = 0.95).
 * Sixty readings a log, seeds written out.
 */
const TRIALS = 500;
const LEAST = 458;
const MOST = 489;

describe('the interval stated for the end of a soak holds the truth as often as it says', () => {
  it.each([
    ['one time constant of 25 min, two hours', body(ROOM_K + 40, [40, 1500]), 2 * HOUR],
    ['the same stopped after one time constant', body(ROOM_K + 40, [40, 1500]), 1500],
    ['a part inside a case: 25 min and 2.5 min, two hours', body(ROOM_K + 42, [30, 1500], [12, 150]), 2 * HOUR],
  ] as const)('%s', (name, truth, seconds) => {
    for (const noiseK of [0.05, 0.2, 0.5]) {
      let inside = 0;
      let told = 0;
      for (let trial = 0; trial < TRIALS; trial += 1) {
        const found = fitOf(truth.at, { seconds, readings: 60, noiseK, seed: `${name}/${noiseK}/${trial}` });
        if (found.fit === undefined) continue;
        told += 1;
        if (Math.abs(outputOf(found, 'end') - truth.end) <= found.fit.endWithin) inside += 1;
      }
      expect(told, `${noiseK} K: logs that say something`).toBeGreaterThanOrEqual(TRIALS * 0.98);
      const outside = told - inside;
      expect(TRIALS - outside, `${noiseK} K of noise`).toBeGreaterThanOrEqual(LEAST);
      expect(TRIALS - outside, `${noiseK} K of noise`).toBeLessThanOrEqual(MOST);
    }
  });
});

describe('a curve without noise comes back as it was made', () => {
  it('one time constant: end, rise and time constant', () => {
    const found = fitOf(body(338.15, [40, 900]).at, { seconds: 2700, readings: 60, noiseK: 0, seed: 'exact' });
    expect(found).toMatchObject({ outcome: 'fitted', changes: [] });
    expect(outputOf(found, 'end')).toBeCloseTo(338.15, 4);
    expect(outputOf(found, 'rise')).toBeCloseTo(40, 4);
    expect(outputOf(found, 'timeConstant')).toBeCloseTo(900, 2);
  });

  it('three equally spaced readings of it give the same end by the closed form', () => {
    // Ta = 25 °C, 40 K, 15 min at 10, 20, 30 min: 44.46, 54.46, 59.59 °C; (T2² - T1 T3) / (2 T2 - T1 - T3) = 65.00 °C
    const truth = body(ROOM_K + 40, [40, 900]);
    const [a, b, c] = [600, 1200, 1800].map((t) => truth.at(t) - 273.15) as [number, number, number];
    expect(a).toBeCloseTo(44.46, 2);
    expect(b).toBeCloseTo(54.46, 2);
    expect(c).toBeCloseTo(59.59, 2);
    expect((b * b - a * c) / (2 * b - a - c)).toBeCloseTo(65, 9);
  });

  it('two time constants, the slower one first', () => {
    const found = fitOf(body(340, [30, 1500], [12, 150]).at, { seconds: 7200, readings: 120, noiseK: 0.01, seed: 'two' });
    expect(found.fit?.shape).toBe('two');
    expect(outputOf(found, 'timeConstant')).toBeCloseTo(1500, -2);
    expect(outputOf(found, 'fastTimeConstant')).toBeCloseTo(150, -1);
    expect(outputOf(found, 'fastRise')).toBeCloseTo(12, 0);
  });
});

describe('doubt of the end', () => {
  it('is that of textbook least squares: the covariance is symmetric, and four times the readings halve it', () => {
    const truth = body(338.15, [40, 900]);
    const few = fitOf(truth.at, { seconds: 2700, readings: 100, noiseK: 0.2, seed: 'few' }).fit!;
    const many = fitOf(truth.at, { seconds: 2700, readings: 1600, noiseK: 0.2, seed: 'many' }).fit!;
    expect(few.covariance[0]![2]).toBeCloseTo(few.covariance[2]![0]!, 12);
    expect(Math.sqrt(few.covariance[0]![0]! / many.covariance[0]![0]!)).toBeCloseTo(4, 0);
  });

  it('of 20,000 readings in 2,000 bins is that of all of them one by one, and so is the end to a hundredth of it', () => {
    const log = logOf(body(338.15, [40, 900]).at, { seconds: 2700, readings: 20_000, noiseK: 0.3, seed: 'long' });
    const binned = fitShape(binReadings(log.times, log.values), 'one', 0)!;
    const full = fitShape(binReadings(log.times, log.values, 20_000), 'one', 0)!;
    expect([binned.bins, binned.readings, full.bins]).toEqual([2000, 20_000, 20_000]);
    const u = Math.sqrt(full.covariance[0]![0]!);
    expect(Math.sqrt(binned.covariance[0]![0]!) / u).toBeCloseTo(1, 1);
    expect(Math.abs(binned.values[0]! - full.values[0]!)).toBeLessThan(0.01 * u);
  });

  it('weighs a bin by how many readings it stands for', () => {
    // two bins of a hundred readings lie on the curve, single readings between them do not
    const truth = body(338.15, [40, 900]);
    const t = Float64Array.from({ length: 40 }, (_, i) => i * 90);
    const count = t.map((_, i) => (i % 3 === 0 ? 10_000 : 1));
    const y = t.map((one, i) => truth.at(one) + (i % 3 === 0 ? 0 : 2));
    expect(fitShape({ t, y, count }, 'one', 0)!.values[0]).toBeCloseTo(338.15, 2);
  });

  it('never gets below what the last digit of the display hides', () => {
    const truth = body(338.15, [40, 900]);
    const rounded = (t: number): number => Math.round(truth.at(t));
    const found = fitOf(rounded, { seconds: 2700, readings: 30, noiseK: 0, seed: 'coarse' }, { lastDigit: 1 });
    expect(found.fit?.scatter).toBeGreaterThanOrEqual(1 / Math.sqrt(12));
  });
});

describe('how much longer it takes', () => {
  it('a log that went on for as long as was said knows its end as well as was asked', () => {
    const truth = body(338.15, [40, 1500]);
    const plan = { noiseK: 0.2, seed: 'go on' };
    const short = fitOf(truth.at, { ...plan, seconds: 1800, readings: 61 }, { withinK: 0.3 });
    expect(short.fit!.endWithin).toBeGreaterThan(0.3);
    const more = short.fit!.stillNeededS!;
    const seconds = 1800 + more;
    const long = fitOf(truth.at, { ...plan, seconds, readings: Math.round(seconds / 30) + 1 }, { withinK: 0.3 });
    expect(long.fit!.endWithin).toBeGreaterThan(0.3 * 0.75); // the scatter of the short log is known to about a tenth
    expect(long.fit!.endWithin).toBeLessThan(0.3 * 1.25);
    expect(fitOf(truth.at, { ...plan, seconds: 9000, readings: 301 }, { withinK: 0.3 }).fit!.stillNeededS).toBe(0);
  });
});

describe('what is not one heating curve', () => {
  const plan = { seconds: 3 * HOUR, readings: 90, noiseK: 0.1, seed: 'change' };
  const before = body(338.15, [40, 1500]);

  it('a load that was raised unlogged after an hour is found, and only what follows is used', () => {
    const raised = (t: number): number => before.at(t) + (t < HOUR ? 0 : 8 * (1 - Math.exp(-(t - HOUR) / 1500)));
    const found = fitOf(raised, plan);
    expect(found.outcome).toBe('fitted');
    expect(found.changes).toMatchObject([{ of: 'cooling' }]);
    expect(found.changes[0]!.atS).toBeGreaterThan(HOUR - 700);
    expect(found.changes[0]!.atS).toBeLessThan(HOUR + 700);
    expect(Math.abs(outputOf(found, 'end') - 346.15)).toBeLessThan(2 * found.fit!.endWithin);
  });

  it('a logged load that steps is named, and only what follows is used', () => {
    const load = Float64Array.from({ length: plan.readings }, (_, i) => (i < 30 ? 18 : 22));
    const found = fitOf((t) => before.at(t) + (t < HOUR ? 0 : 8 * (1 - Math.exp(-(t - HOUR) / 1500))), plan, { load });
    expect(found.changes[0]).toMatchObject({ of: 'load' });
    expect(found.fit!.fromS).toBeGreaterThanOrEqual(HOUR);
    expect(Math.abs(outputOf(found, 'end') - 346.15)).toBeLessThan(2 * found.fit!.endWithin);
  });

  it('a room that warms by three kelvin is told', () => {
    const ambient = Float64Array.from({ length: plan.readings }, (_, i) => 296 + (3 * i) / plan.readings);
    const found = fitOf(before.at, plan, { ambient });
    expect(found.changes).toMatchObject([{ of: 'ambient' }]);
    expect(found.ambient!.half).toBeCloseTo(1.5, 1);
  });

  it('a steady curve is not cut: at most one of a hundred logs', () => {
    let cut = 0;
    for (let trial = 0; trial < 100; trial += 1) if (fitOf(before.at, { ...plan, seed: `steady ${trial}` }).changes.length > 0) cut += 1;
    expect(cut).toBeLessThanOrEqual(1);
  });

  it('a slope that grows is no curve: nothing is extrapolated from it', () => {
    const running = (t: number): number => 300 + 10 * (1 - Math.exp(-t / 600)) + 0.5 * Math.exp(t / 1800);
    const found = fitOf(running, { seconds: 2 * HOUR, readings: 60, noiseK: 0.2, seed: 'away' });
    expect(found.outcome).toBe('rising');
    expect(found.fit).toBeUndefined();
    expect(found.lastSlope).toBeGreaterThan(0);
  });
});

describe('logs that do not say', () => {
  const truth = body(338.15, [40, 1500]);

  it.each([
    ['three minutes', truth.at, { seconds: 180, readings: 60, noiseK: 0.05, seed: 'a' }, 'soak-too-short'],
    ['five readings', truth.at, { seconds: 7200, readings: 5, noiseK: 0.05, seed: 'b' }, 'soak-few-readings'],
    ['a unit that was warm before', () => 338.15, { seconds: 7200, readings: 60, noiseK: 0.2, seed: 'c' }, 'soak-flat'],
  ] as const)('%s', (_, at, plan, code) => {
    const found = fitOf(at, plan);
    expect(found.outcome).toBe('refused');
    expect(found.refusal?.code).toBe(code);
  });
});
