import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/core/result/assessment.ts';
import { toLineMark } from '../../src/present/figure/line-mark.ts';
import { drawLine, drawMarginLine, MARGIN_LINE_ROW, placeOfMark, placeOfRatio } from '../../src/present/figure/margin-line.ts';
import { drawPlaceStrip, PLACE_STRIP } from '../../src/present/figure/place-strip.ts';
import { drawUnitAxis, UNIT_AXIS } from '../../src/present/figure/unit-axis.ts';
import { standingText } from '../../src/present/words/casebook-words.ts';
import { type CasePortrait, type PortraitMark, toCasePortrait, toCells } from '../../src/present/workspace/case-portrait.ts';
import { countWorse, toColumns, worstMark } from '../../src/present/workspace/casebook-columns.ts';
import { findingOf } from './build-assessment.ts';
import { fullAssessment } from './sample-assessment.ts';
import { CREEPAGE } from './sample-findings.ts';

const ASSESSMENT = fullAssessment();
const PORTRAIT = toCasePortrait(ASSESSMENT);

function markOf(check: string, more: Partial<PortraitMark> = {}): PortraitMark {
  const line = toLineMark(findingOf(check, { outcome: 'pass', margin: 0.5 }));
  return {
    ...line,
    amounts: true,
    check,
    hazard: check.split('/')[0] ?? '',
    value: '',
    struck: false,
    says: 'pass',
    finding: check,
    ...more,
  };
}

function portraitOf(marks: readonly PortraitMark[], unread: readonly string[] = []): CasePortrait {
  return { ...PORTRAIT, marks, unread };
}

describe('what a list keeps of a finding', () => {
  it('draws the same line as the finding itself, also after it was kept as JSON', () => {
    for (const finding of ASSESSMENT.findings) {
      const kept = JSON.parse(JSON.stringify(toLineMark(finding)));
      expect(drawLine(kept, MARGIN_LINE_ROW), finding.id).toEqual(drawMarginLine(finding, MARGIN_LINE_ROW));
    }
  });

  it('keeps the place of the lower rung and both strokes: 5.0 mm asked for and 2.5 mm basic is a ratio of 2', () => {
    const { limit } = toLineMark(CREEPAGE);
    expect(limit?.basic?.ratio).toBe(2);
    expect(drawMarginLine(CREEPAGE, MARGIN_LINE_ROW).markup).toContain(`limit rung ${limit?.basic?.stroke}`);
  });

  it('lets the bad side of a bound stay open through JSON, which has no infinity', () => {
    const bound: Finding = findingOf('shock/cold-insulation', {
      outcome: 'inconclusive',
      margin: 0.5,
      measured: { value: 4e6, unit: 'Ω', u: null, side: 'below' },
      limit: { ...CREEPAGE.limit!, kind: 'atLeast' },
    });
    expect(JSON.parse(JSON.stringify(toLineMark(bound))).band).toEqual([0.5, null]);
  });

  it('gives back a cell for every letter', () => {
    const states = toCells(PORTRAIT.cells.shock).map(({ state }) => state);
    expect(states).toEqual(ASSESSMENT.verdict.cells.shock.map(({ state }) => state));
  });

  it('names every check that is open, either as a mark or among the unread', () => {
    const open = new Set(ASSESSMENT.findings.filter(({ outcome }) => outcome === 'notAssessed').map(({ check }) => check));
    const named = new Set([...PORTRAIT.unread, ...PORTRAIT.marks.map(({ check }) => check)]);
    expect([...open].filter((check) => !named.has(check))).toEqual([]);
    expect(PORTRAIT.unread.filter((check) => PORTRAIT.marks.some((mark) => mark.check === check))).toEqual([]);
  });
});

describe('a unit on one axis', () => {
  it('stands every mark where its own line has it, shock and fire above, the rest below', () => {
    const drawn = drawUnitAxis([
      markOf('shock/touch-current', { margin: 0.5 }),
      markOf('delivery/current', { margin: 2, outcome: 'fail' }),
    ]).markup;
    const x = Number(placeOfRatio(0.5, UNIT_AXIS).toFixed(2));
    expect(drawn).toContain(`<circle class="m-pass full" cx="${x}" cy="8" r="4"/>`);
    const crosses = [...drawn.matchAll(/m-fail open" stroke-width="2.4" d="M([\d.]+) ([\d.]+)/g)];
    expect(crosses).toHaveLength(1);
    expect(Number(crosses[0]?.[2])).toBeGreaterThan(UNIT_AXIS.height / 2);
  });

  it('draws nothing for a check that was not assessed', () => {
    expect(drawUnitAxis([markOf('shock/creepage', { outcome: 'notAssessed', margin: null })])).toEqual(drawUnitAxis([]));
  });

  it('never stands a mark outside the axis, and off the scale only beyond a quarter and four times', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (margin) => {
        const { x, off } = placeOfMark(markOf('harm/ripple', { margin }), UNIT_AXIS);
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(UNIT_AXIS.width);
        expect(off).toBe(margin > 4 ? 'bad' : margin < 0.25 ? 'good' : null);
      }),
    );
  });
});

describe('one case among all', () => {
  it('draws one stroke for cases in one place, and the grounds of the middle half and nine of ten', () => {
    const drawn = drawPlaceStrip([2, 2, 2, 1, 0.5], null).markup;
    const d = /class="others" d="([^"]*)"/.exec(drawn)?.[1] ?? '';
    expect(d.match(/M/g)).toHaveLength(3);
    // of five ratios in order the second and the fourth bound the middle half: 2 and 1
    const [left, right] = [placeOfRatio(2, PLACE_STRIP), placeOfRatio(1, PLACE_STRIP)];
    expect(drawn).toContain(`<rect class="half" x="${left}"`);
    expect(drawn).toContain(`width="${Number((right - left).toFixed(2))}"`);
  });

  it('counts as worse what failed without a ratio, and never the case itself', () => {
    const places = { ratios: [3, 1.23, 1.23, 0.4], beyond: 2 };
    expect(countWorse(places, markOf('shock/creepage', { margin: 1.2314 }))).toBe(3);
    expect(countWorse(places, markOf('shock/creepage', { margin: 0.4 }))).toBe(5);
    expect(countWorse(places, markOf('shock/creepage', { margin: null, outcome: 'fail' }))).toBe(0);
  });

  it('says how many stand worse and how many cannot be placed', () => {
    expect(standingText({ judged: 4, all: 6, worse: 1, stands: true })).toBe(
      '1 of 3 others is worse. 2 cases cannot be placed on this line.',
    );
    expect(standingText({ judged: 0, all: 6, worse: 0, stands: false })).toBe('No case can be placed on this line.');
  });

  it('takes as the worst of a hazard a failure without a ratio before any ratio', () => {
    const marks = [
      markOf('shock/creepage', { margin: 3, outcome: 'fail' }),
      markOf('shock/bridging-part', { margin: null, outcome: 'fail' }),
    ];
    expect(worstMark({ marks }, 'shock')?.check).toBe('shock/bridging-part');
    expect(worstMark({ marks }, 'fire')).toBeNull();
  });
});

describe('a few cases side by side', () => {
  it('give one row to a check that any of them has a mark for, and tell open from not applicable', () => {
    const groups = toColumns([
      portraitOf([markOf('shock/creepage')]),
      portraitOf([], ['shock/creepage', 'shock/clearance']),
      portraitOf([]),
    ]);
    expect(groups).toHaveLength(1);
    expect(groups[0]?.rows.map(({ check }) => check)).toEqual(['shock/creepage']);
    expect(groups[0]?.rows[0]?.cells.map((cell) => (cell === null || cell === 'unread' ? cell : cell.check))).toEqual([
      'shock/creepage',
      'unread',
      null,
    ]);
    expect(groups[0]?.unread).toBe(1);
  });
});
