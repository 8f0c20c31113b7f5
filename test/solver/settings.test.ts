import { describe, expect, it } from 'vitest';
import { adapter } from '../../bench/solver/adapter.ts';
import type { Snapshot, SolverResult } from '../../src/core/solver/request.ts';
import { simulate } from '../../src/core/solver/simulate.ts';
import { BUDGET, battery, capacitor, inductor, kneeDiode, numberOf, resistor, runCircuit } from './run-circuit.ts';

const request = {
  circuit: adapter().circuit,
  stopS: 0.5e-3,
  fromS: 0.1e-3,
  start: 'given',
  probes: [{ id: 'out', of: { volts: ['out', 'zero'] } }],
  accuracy: 'screening',
  most: BUDGET,
  endAtRating: false,
} as const;

describe('a run', () => {
  it('gives the same bytes each time', () => expect(JSON.stringify(simulate(request))).toBe(JSON.stringify(simulate(request))));

  it('goes on from a snapshot as if it had not stopped', () => {
    const parts = [
      battery('V1', 'a', '0', 10, 1),
      inductor('L1', 'a', 'b', 1e-3, 1),
      capacitor('C1', 'b', '0', 1e-6, 0.1),
      kneeDiode('D1', 'b', '0', 5, 1),
    ];
    const whole = runCircuit(parts, 2 ** -10);
    const half = runCircuit(parts, 2 ** -11);
    const rest = runCircuit(parts, 2 ** -11, {}, { start: JSON.parse(JSON.stringify(half.end)) });
    expect(rest.end.ticks).toBe(whole.end.ticks);
    for (const [name, value] of Object.entries(whole.end.states)) expect(rest.end.states[name]).toBeCloseTo(value, 6);
  });

  it('goes on from a snapshot that was kept as text, controllers and all', () => {
    const first = simulate(request) as SolverResult;
    const on = (start: Snapshot) => simulate({ ...request, start }) as SolverResult;
    const direct = on(first.end);
    expect(direct.controllers['U1']!.pulses).toBeGreaterThan(10);
    expect(on(JSON.parse(JSON.stringify(first.end))).end).toEqual(direct.end);
  });

  it('starts with nothing charged when told so', () => {
    const parts = [resistor('R1', 'a', '0', 10), capacitor('C1', 'a', '0', 1e-6, 1, 100)];
    expect(runCircuit(parts, 1e-6).end.states['C1/0']).toBeGreaterThan(80);
    expect(runCircuit(parts, 1e-6, {}, { start: 'discharged' }).end.states['C1/0']).toBe(0);
  });

  it('stops when asked to, and says how far it came', () => {
    let looks = 0;
    const result = simulate({
      ...request,
      stopS: 0.05,
      cancelled: () => {
        looks += 1;
        return looks > 3;
      },
    });
    expect(result).toMatchObject({ outcome: 'cancelled' });
    expect((result as { reachedS: number }).reachedS).toBeLessThan(0.05);
  });

  it('looks at the stop button at least every 50 ms', () => {
    const times: number[] = [];
    simulate({ ...request, stopS: 5e-3, cancelled: () => times.push(performance.now()) < 0 });
    expect(times.length).toBeGreaterThan(10);
    // the median, since other work on the machine may hold up any single one
    const gaps = times
      .slice(1)
      .map((time, index) => time - times[index]!)
      .sort((a, b) => a - b);
    expect(gaps[Math.floor(gaps.length / 2)]).toBeLessThan(50);
  });

  it('reports how far it is, never backwards', () => {
    const shares: number[] = [];
    simulate({ ...request, progress: (share) => shares.push(share) });
    expect(shares.length).toBeGreaterThan(3);
    expect(shares.every((share, index) => index === 0 || share >= shares[index - 1]!)).toBe(true);
    expect(shares.at(-1)).toBe(1);
  });

  it('of a second of hiccup costs what its pulses cost, nothing for the pauses', () => {
    const { circuit } = adapter({ loadOhms: 0.05, outputV: 0.05 });
    // without the auxiliary rectifier the start resistor alone feeds the controller
    const fed = { ...circuit, parts: circuit.parts.filter(({ ref }) => ref !== 'D7') };
    const { outcome, effort, controllers, energy } = runCircuit([], 1, {}, { circuit: fed, accuracy: 'screening' });
    expect([outcome, energy.balanced]).toEqual(['completed', true]);
    expect(controllers['U1']!.starts).toBeGreaterThan(4);
    const PRODUCTS_OF_A_PULSE = 160;
    expect(effort.steps).toBeLessThan(PRODUCTS_OF_A_PULSE * controllers['U1']!.pulses);
  });

  it('ends with a reason when its budget is spent', () =>
    expect(simulate({ ...request, stopS: 1, most: { steps: 2000, topologies: 3000 } })).toMatchObject({ outcome: 'budgetSpent' }));

  it('gives no number for a voltage that nothing fixes', () => {
    const parts = [
      battery('V1', 'a', '0', 10, 1),
      resistor('R1', 'a', '0', 10),
      resistor('R2', 'x', 'y', 10),
      capacitor('C1', 'x', 'y', 1e-6, 1, 5),
    ];
    const result = runCircuit(parts, 1e-6, { across: { volts: ['x', 'a'] }, inside: { volts: ['x', 'y'] } });
    expect(result.probes['across']).toEqual({ because: 'floating' });
    expect(numberOf(result, 'inside').most).toBeGreaterThan(4);
  });

  it('ends at the first rating exceeded', () => {
    const parts = [battery('V1', 'a', '0', 100, 100), { ...capacitor('C1', 'a', '0', 1e-6, 1), ratedV: 50 }];
    const result = runCircuit(parts, 1e-3, {}, { endAtRating: true });
    expect(result.outcome).toBe('ratingExceeded');
    expect(result.findings[0]).toMatchObject({ code: 'ratingExceeded', ref: 'C1', limit: 50 });
    expect(result.reachedS).toBeLessThan(1e-3);
  });

  it('finds a breakdown where it happens', () => {
    const diode = { ...kneeDiode('D1', '0', 'a', 0.7, 0.1), breakdown: { volts: 60, ohms: 1 } };
    const parts = [battery('V1', 'a', '0', 100, 100), capacitor('C1', 'a', '0', 1e-6, 1), diode];
    expect(runCircuit(parts as never, 1e-3).findings[0]).toMatchObject({ code: 'breakdown', ref: 'D1', limit: 60 });
  });
});

describe('a request', () => {
  it.each([
    [
      'a part twice',
      { circuit: { title: 't', earth: '0', parts: [resistor('R1', 'a', '0', 1), resistor('R1', 'a', '0', 1)] }, probes: [] },
      'repeated-part',
    ],
    ['a negative resistance', { circuit: { title: 't', earth: '0', parts: [resistor('R1', 'a', '0', -1)] }, probes: [] }, 'out-of-range'],
    ['a net that is not there', { probes: [{ id: 'x', of: { volts: ['nowhere', 'out'] } }] }, 'unknown-net'],
    ['a part that is not there', { probes: [{ id: 'x', of: { ampsInto: 'R99' } }] }, 'unknown-part'],
    ['a time that has no end', { stopS: Number.POSITIVE_INFINITY }, 'time-out-of-range'],
  ])('for %s is refused', (_, change, code) => {
    const answer = simulate({ ...request, ...change } as never);
    expect(Array.isArray(answer) && answer.map((one) => one.code)).toContain(code);
  });
});
