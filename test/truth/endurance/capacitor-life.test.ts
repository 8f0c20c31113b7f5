import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, judge, noteKeys } from '../build-case.ts';
import { onPart } from '../component-rows.ts';
import { type PartInput, WARM } from '../evidence-pieces.ts';

/*
 * Asked for: two years of day and night, 2 × 8766 h = 17,532 h (convention of this project, common practice).
 * By hand for 2000 h at 105 °C: ripple unknown, 2.5 K taken, α 1.05: T_a = T_c - 2.381; 2^(5/8.75 - 2.5/9.375) = 1.2352;
 * L = 2000 × 1.2352 × 2^((105 - T_a)/10): at 60 °C 65.9, 70 °C 32.96, 80 °C 16.48, 95 °C 5.83 thousand hours.
 */
const CAPACITOR: PartInput = { id: 'c1', ref: 'C1', kind: 'electrolyticCapacitor', rating: { temperature: '105 °C', life: '2000 h' } };
const ROOM = { ...WARM, loads: [...WARM.loads] };
const judged = (celsius: string, part: PartInput = CAPACITOR, under: Parameters<typeof onPart>[2] = { under: ROOM }): Finding =>
  findingOf(judge(onPart(part, celsius, under)), 'endurance/capacitor-life@spot');
const hoursOf = ({ measured }: Finding): number => (measured !== null && 'value' in measured ? measured.value / 3600 : Number.NaN);

describe('a capacitor of 2000 h at 105 °C', () => {
  it('lasts 33,000 h with a can of 70 °C: more than two years of day and night', () => {
    const finding = judged('70 °C ± 2 K');
    expect(finding).toMatchObject({ outcome: 'pass', state: 'labelLoad', limit: { name: 'leastLife', grade: 'common-practice' } });
    expect(hoursOf(finding)).toBeCloseTo(32_964, -2);
    expect(finding.limit!.at!.value / 3600).toBe(17_532);
    expect(noteKeys(finding)).toContain('lifeFromNew');
  });

  it('with a can of 80 °C nobody can tell, with one of 95 °C it disappoints', () => {
    expect(judged('80 °C ± 2 K')).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    const hot = judged('95 °C ± 2 K');
    expect(hot).toMatchObject({ outcome: 'fail', consequence: 'disappointing' });
    expect(hoursOf(hot)).toBeCloseTo(5827, -1.5);
  });

  it('at the highest ambient it is told as well: 70 °C at 25 °C is 86.1 °C at 40 °C, 10,800 h', () => {
    const told = judged('70 °C ± 2 K').notes.find(({ key }) => key === 'lifeAtHighest');
    expect(Number(told?.args['hours'])).toBeGreaterThan(10_600);
    expect(Number(told?.args['hours'])).toBeLessThan(10_900);
  });

  it('above its rated temperature no life is given, and none is given there for the highest ambient either', () => {
    const above = judged('107 °C ± 2 K');
    expect(above).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable', measured: null });
    expect(noteKeys(above)).toContain('aboveRatedTemperature');
    expect(noteKeys(judged('95 °C ± 2 K'))).toContain('aboveRatedAtHighest');
  });

  it('read with the cover open it may last less than it looks: it can fail, not pass', () => {
    const open = { under: { ...ROOM, cover: 'open' as const } };
    expect(judged('60 °C ± 2 K', CAPACITOR, open).outcome).toBe('inconclusive');
    expect(judged('97 °C ± 2 K', CAPACITOR, open).outcome).toBe('fail');
  });

  it('at a light load it settles nothing about use', () => {
    const light = { under: { ...ROOM, loads: [{ port: 'usb', level: '5v', draws: '0.5 A' }] } };
    expect(judged('60 °C ± 2 K', CAPACITOR, light)).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
  });
});

it('a life that nobody read off the part or its sheet is not assumed', () => {
  expect(judged('70 °C ± 2 K', { ...CAPACITOR, rating: { temperature: '105 °C' } })).toMatchObject({
    outcome: 'notAssessed',
    reason: 'notLooked',
  });
  const unknown = { ...CAPACITOR, rating: { temperature: '105 °C', life: { state: 'unknown' as const, because: 'no sheet' } } };
  expect(judged('70 °C ± 2 K', unknown)).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
});

it('no electrolytic capacitor was read: nothing is said', () => {
  expect(findingOf(judge({}), 'endurance/capacitor-life')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
});
