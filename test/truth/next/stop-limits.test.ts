import { describe, expect, test } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import { judge } from '../build-case.ts';

/** Stop limits are what careful people write into the load (common practice): 1.3 times the claim, 1.5 times what is advertised, 0.9 of a capacitor's rating. */
const PORT: NonNullable<CaseInput['ports']>[number] = {
  id: 'usb',
  name: 'socket',
  kind: 'usbA',
  levels: [{ id: '5v', voltage: '5 V', printed: '2 A' }],
};

function stopsOf(patch: Parameters<typeof judge>[0]): Record<string, number> {
  const next = judge(patch).next.find(({ id }) => id === 'sweep' || id === 'sweepWithInput');
  return Object.fromEntries((next?.stop ?? []).map(({ of, at }) => [of, at.value]));
}

describe('before a load test the tool says where to stop', () => {
  test('at 1.3 times the claim, 1.2 times and half the nominal voltage', () => {
    const stops = stopsOf({ ports: [PORT] });
    expect(stops['outputCurrent']).toBeCloseTo(2.6, 9);
    expect(stops['outputVoltageUp']).toBeCloseTo(6, 9);
    expect(stops['outputVoltageDown']).toBeCloseTo(2.5, 9);
  });

  test('lower where a part allows less: a 1 A rectifier, a 6.3 V capacitor', () => {
    const conductors = [
      { id: 'out-plus', name: 'plus', side: 'output' },
      { id: 'out-minus', name: 'minus', side: 'output' },
    ] as const;
    const pins = [
      { pin: '1', net: 'out-plus' },
      { pin: '2', net: 'out-minus' },
    ];
    const stops = stopsOf({
      ports: [PORT],
      conductors: [...conductors],
      parts: [
        { id: 'd5', ref: 'D5', kind: 'diode', rating: { current: '1 A' }, pins },
        { id: 'c7', ref: 'C7', kind: 'electrolyticCapacitor', rating: { voltage: '6.3 V' }, pins },
      ],
    });
    expect(stops['outputCurrent']).toBeCloseTo(1, 9);
    expect(stops['outputVoltageUp']).toBeCloseTo(5.67, 9); // 0.9 × 6.3 V
  });

  test('a diode on the mains side sets no limit for the output', () => {
    const conductors = [{ id: 'line', name: 'line', side: 'mains' } as const];
    const parts = [{ id: 'd1', ref: 'D1', kind: 'diode' as const, rating: { current: '1 A' }, pins: [{ pin: '1', net: 'line' }] }];
    expect(stopsOf({ ports: [PORT], conductors, parts })['outputCurrent']).toBeCloseTo(2.6, 9);
  });

  test('every stop limit can say where it comes from', () => {
    const assessment = judge({ ports: [PORT] });
    const ids = new Set(assessment.steps.map(({ id }) => id));
    const stops = assessment.next.flatMap(({ stop }) => stop);
    expect(stops.length).toBeGreaterThan(0);
    for (const { step } of stops) expect(ids.has(step ?? '')).toBe(true);
  });
});
