import { describe, expect, it } from 'vitest';
import { drawSetPointSpread, SPREAD_NARROW, SPREAD_WIDE } from '../../src/present/figure/set-point-spread.ts';
import { judge } from '../truth/build-case.ts';
import { traced } from '../truth/circuit-pieces.ts';

// 431A (1 %, memory), 10 kΩ over 10 kΩ of 1 %, up to 4 µA: by hand
const RSS = Math.hypot(0.01 * 4.99, 2.495 * 0.01 * Math.SQRT2, (4e-6 * 10_000) / 2);
const spreadOf = (changes: Record<string, string> = {}) => judge(traced(changes)).circuit?.spreads?.[0];

describe('how far the set output can stray', () => {
  it('the draws lie inside the worst case, all of them are counted, and the band is the root of the sum of squares', () => {
    const spread = spreadOf()!;
    expect(spread.half).toBeCloseTo(RSS, 9);
    expect(spread.counts.reduce((sum, count) => sum + count, 0)).toBe(spread.draws);
    expect(spread.from).toBeGreaterThan(spread.least);
    expect(spread.to).toBeLessThan(spread.most);
    // three uniform parts of about equal weight: the middle is fuller than the ends by far
    expect(spread.counts[12]!).toBeGreaterThan(5 * Math.max(spread.counts[0]!, spread.counts.at(-1)!));
    // two thirds and more of the draws stray less than the band: its half width is 1.7 of their standard uncertainties
    const step = (spread.to - spread.from) / spread.counts.length;
    const inside = spread.counts.filter((_, bin) => Math.abs(spread.from + (bin + 0.5) * step - spread.middle) < spread.half);
    expect(inside.reduce((sum, count) => sum + count, 0) / spread.draws).toBeGreaterThan(0.85);
  });

  it('the same parts give the same picture, other parts another one, and none without a tolerance', () => {
    expect(spreadOf()).toEqual(spreadOf());
    expect(spreadOf({ 'R8 ': 'R8 9k1 1%: REF, OUT-' })?.counts).not.toEqual(spreadOf()?.counts);
    expect(spreadOf({ 'U3 ': 'U3 TLV431: R=REF, A=OUT-, K=KA' })).toBe(undefined);
  });

  it('is drawn with its limits and edges in numbers, at both widths, no bar outside of the edges', () => {
    const spread = spreadOf()!;
    for (const size of [SPREAD_WIDE, SPREAD_NARROW]) {
      const { markup } = drawSetPointSpread([spread], size);
      expect(markup.match(/class="bar"/g)).toHaveLength(spread.counts.length);
      for (const text of ['4.75', '5.25', 'harmful']) expect(markup).toContain(text);
      const [left, right] = [...markup.matchAll(/class="claimed" d="M([\d.]+)/g)].map((found) => Number(found[1]));
      for (const [, x, width] of markup.matchAll(/class="bar" x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(left! - 0.5);
        expect(Number(x) + Number(width)).toBeLessThanOrEqual(right! + 0.5);
      }
    }
  });
});
