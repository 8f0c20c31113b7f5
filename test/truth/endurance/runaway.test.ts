import { describe, expect, it } from 'vitest';
import type { Part } from '../../../src/core/evidence/sample.ts';
import { given } from '../../../src/core/trace/derived.ts';
import { runawayOf } from '../../../src/core/working/heat/runaway-facts.ts';

const reverse = given('typed', 30, 'V', { id: 'reverse', name: 'reverse' });
const diode = (marking: string): Part => ({ id: 'd5', ref: 'D5', kind: 'diode', marking });

describe('where a Schottky rectifier runs away by its own leakage', () => {
  it('follows from the greatest leakage of its type: 1N5822, 20 mA at 100 °C, 40 K/W, 30 V for 0.6 of the time', () => {
    // 1 / (30 × 0.6 × 0.055 × 40) = 25.25 mA; 100 °C + ln(25.25/20)/0.055 = 104.2 °C
    const found = runawayOf(diode('1N5822'), reverse, 'x')!;
    expect(found.value - 273.15).toBeCloseTo(100 + Math.log(1 / (30 * 0.6 * 0.055 * 40) / 0.02) / 0.055, 9);
    expect(found.value - 273.15).toBeCloseTo(104.24, 1);
  });

  it('is found by the type however it is printed, and not for one that is not in the table', () => {
    expect(runawayOf(diode('1n-5822'), reverse, 'x')).not.toBeNull();
    expect(runawayOf(diode('XYZ 17'), reverse, 'x')).toBeNull();
  });

  it('lies lower the more it blocks', () => {
    const more = given('typed', 60, 'V', { id: 'more', name: 'reverse' });
    expect(runawayOf(diode('SK34A'), more, 'x')!.value).toBeLessThan(runawayOf(diode('SK34A'), reverse, 'x')!.value);
  });
});
