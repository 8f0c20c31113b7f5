import { describe, expect, it } from 'vitest';
import type { Assessment, Finding } from '../../src/core/result/assessment.ts';
import { findingOf, judge } from './build-case.ts';
import { HOT_ROOM } from './component-rows.ts';
import { spot, TRANSFORMER, usbPort, winding } from './evidence-pieces.ts';

/*
 * Class B bears 110 °C by thermocouple (secondary). A winding of 120 °C in a room of 40 °C that cools with 120 s:
 * 40 + 80 exp(-30/120) = 102.30 °C after 30 s, 40 + 80 exp(-60/120) = 88.52 °C after 60 s. Neither looks like too much.
 */
const at = (celsius: string, seconds: string, id: string): ReturnType<typeof spot> =>
  spot('winding', celsius, { under: { ...HOT_ROOM, cover: { openedBefore: seconds } } }, id);
const judged = (...exhibits: ReturnType<typeof spot>[]): Assessment =>
  judge({ ports: [usbPort()], parts: [TRANSFORMER], places: [winding('B')], exhibits });
const found = (...exhibits: ReturnType<typeof spot>[]): Finding => findingOf(judged(...exhibits), 'fire/winding-temperature@winding');

describe('a winding read after the cover was taken off', () => {
  it('two readings are carried back to the moment of opening: 120 °C, which fails', () => {
    const finding = found(at('102.30 °C ± 0.4 K', '30 s', 'one'), at('88.52 °C ± 0.4 K', '60 s', 'two'));
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'injurious' });
    expect('value' in finding.measured! ? finding.measured.value - 273.15 : 0).toBeCloseTo(120, 1);
    const { steps } = judged(at('102.30 °C ± 0.4 K', '30 s', 'one'), at('88.52 °C ± 0.4 K', '60 s', 'two'));
    expect(steps.find(({ formula }) => formula === 'thermal/at-opening')?.notes.map(({ key }) => key)).toContain('carriedBack');
  });

  it('a body that falls faster at first was hotter still: the way back never overshoots it', () => {
    const truth = (t: number): number => 40 + 60 * Math.exp(-t / 300) + 20 * Math.exp(-t / 20);
    const finding = found(at(`${truth(30).toFixed(2)} °C ± 0.1 K`, '30 s', 'one'), at(`${truth(60).toFixed(2)} °C ± 0.1 K`, '60 s', 'two'));
    const back = 'value' in finding.measured! ? finding.measured.value - 273.15 : Number.NaN;
    expect(back).toBeLessThanOrEqual(truth(0));
    expect(back).toBeGreaterThan(truth(30));
  });

  it('it remains a bound from below: it never passes', () => {
    expect(found(at('60.0 °C ± 0.4 K', '30 s', 'one'), at('56.0 °C ± 0.4 K', '60 s', 'two'))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'oneSided',
    });
  });

  it('one reading, two that did not fall, and two too close together are not carried anywhere', () => {
    for (const exhibits of [
      [at('102.3 °C ± 0.4 K', '30 s', 'one')],
      [at('102.3 °C ± 0.4 K', '30 s', 'one'), at('102.4 °C ± 0.4 K', '60 s', 'two')],
      [at('102.3 °C ± 0.4 K', '30 s', 'one'), at('100.2 °C ± 0.4 K', '34 s', 'two')],
    ])
      expect(judged(...exhibits).steps.some(({ formula }) => formula === 'thermal/at-opening')).toBe(false);
  });
});
