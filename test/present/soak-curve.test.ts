import { describe, expect, it } from 'vitest';
import type { SoakCurve } from '../../src/core/result/assessment.ts';
import { drawSoakCurve, SOAK_WIDE } from '../../src/present/figure/soak-curve.ts';
import { soakSentence } from '../../src/present/words/soak-words.ts';

const K = 273.15;
const SOAK: SoakCurve = {
  exhibit: 'soak-1',
  column: 'winding',
  place: 'winding',
  name: 'winding',
  outside: false,
  state: 'labelLoad',
  ambient: 25 + K,
  outcome: 'fitted',
  refusal: null,
  changes: [],
  endNow: false,
  lastSlope: 0,
  points: [
    [0, 25 + K],
    [3600, 80 + K],
    [7200, 90 + K],
  ],
  curve: [
    [0, 25 + K],
    [9720, 95 + K],
  ],
  fit: { end: 100 + K, U: 2, step: 's', shape: 'one', fromS: 0, toS: 7200, timeConstantS: 1500, fitWithin: 1, withinK: 1, stillNeededS: 0 },
  limits: [],
  stop: { at: 105 + K, step: 't', reachedAtS: null },
};
const draw = (more: Partial<SoakCurve>): string => drawSoakCurve({ ...SOAK, ...more }, { findings: [] }, SOAK_WIDE).markup;
const rect = (markup: string, kind: string): Record<string, number> => {
  const [, body = ''] = new RegExp(`<rect class="${kind}" ([^>]*)/>`).exec(markup) ?? [];
  return Object.fromEntries([...body.matchAll(/(\w+)="([\d.]+)"/g)].map(([, key, value]) => [key!, Number(value)]));
};

describe('the picture of a soak', () => {
  it('has other ground from the last reading to the right edge: 120 of 162 minutes across', () => {
    const ground = rect(draw({}), 'claim');
    expect(ground['x']).toBeCloseTo(40 + (120 / 162) * (640 - 24 - 40), 0);
    expect(ground['x']! + ground['width']!).toBeCloseTo(640 - 24, 0);
  });

  it('shows the end as a band twice as high for twice the doubt, never thinner than two pixels', () => {
    const [one, two] = [rect(draw({ fit: { ...SOAK.fit!, U: 2 } }), 'end'), rect(draw({ fit: { ...SOAK.fit!, U: 4 } }), 'end')];
    expect(two['height']! / one['height']!).toBeCloseTo(2, 1);
    expect(rect(draw({ fit: { ...SOAK.fit!, U: 0.001 } }), 'end')['height']).toBe(2);
  });

  it('draws neither curve nor end of a log that runs away', () => {
    const markup = draw({ outcome: 'rising', fit: null, curve: [] });
    expect(markup).not.toContain('class="model"');
    expect(markup).not.toContain('class="end"');
    expect(soakSentence({ ...SOAK, outcome: 'rising', fit: null })).toMatch(/End the test at once/);
  });
});

describe('what is said of a soak', () => {
  it('where it is heading, how well that is known and where to end it', () => {
    expect(soakSentence(SOAK)).toMatch(/winding is heading for 100.0.±.2.0.°C; long enough for ± 1 K\. It stays below 105.°C/);
    expect(soakSentence({ ...SOAK, stop: { at: 95 + K, step: 't', reachedAtS: 8100 } })).toContain(
      'End the soak at 95\u00a0°C, reached 2 h 15 min into the log.',
    );
    expect(soakSentence({ ...SOAK, fit: { ...SOAK.fit!, stillNeededS: 1500 } })).toContain('25 min more for ± 1 K');
  });

  it('why a log does not say', () => {
    const refusal = { code: 'soak-too-short', got: '3.0 min of log', expected: 'at least 18 min' };
    expect(soakSentence({ ...SOAK, outcome: 'refused', fit: null, refusal })).toBe(
      'winding: Does not say: got "3.0 min of log", expected at least 18 min.',
    );
  });

  it('what changed on the way', () => {
    expect(soakSentence({ ...SOAK, changes: [{ of: 'load', atS: 3600 }] })).toContain(
      'At 60 min the load was changed: only what follows is used.',
    );
  });
});
