import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/core/result/assessment.ts';
import { drawMarginLine, factorText, MARGIN_LINE_ROW, placeOfRatio } from '../../src/present/figure/margin-line.ts';
import { toSvgFile } from '../../src/present/figure/to-svg-file.ts';
import { amountOf, findingOf, limitOf } from './build-assessment.ts';
import { CREEPAGE } from './sample-findings.ts';

const SIZE = { width: 114, height: 34 }; // 7 px free at each end leave 100 px for four octaves: 25 px an octave, the limit at 57
const draw = (finding: Finding): string => drawMarginLine(finding, SIZE).markup;
const PASS: Finding = findingOf('shock/touch-current', {
  outcome: 'pass',
  reason: 'met',
  measured: amountOf(0.0002, 'A', 0.00001),
  limit: limitOf('atMost', amountOf(0.0005, 'A'), 'secondary'),
  margin: 0.5,
  marginBand: [0.25, 1],
  probability: 0.999,
});

describe('the margin line', () => {
  it('puts the limit in the middle, half the limit an octave right, twice the limit an octave left', () => {
    expect(placeOfRatio(1, SIZE)).toBe(57);
    expect(placeOfRatio(0.5, SIZE)).toBe(82);
    expect(placeOfRatio(2, SIZE)).toBe(32);
    expect(placeOfRatio(0.25, SIZE)).toBe(107);
    expect(placeOfRatio(4, SIZE)).toBe(7);
  });

  it('never lets a worse ratio stand right of a better one, and never leaves the axis', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (a, b) => {
        const [better, worse] = a < b ? [a, b] : [b, a];
        expect(placeOfRatio(worse, SIZE)).toBeLessThanOrEqual(placeOfRatio(better, SIZE));
        expect(placeOfRatio(a, SIZE)).toBeGreaterThanOrEqual(7);
        expect(placeOfRatio(a, SIZE)).toBeLessThanOrEqual(107);
      }),
    );
  });

  it('draws a pass as a disc at its ratio with the band between the ends of its interval', () => {
    const drawn = draw(PASS);
    expect(drawn).toContain('<circle class="m-pass full" cx="82" cy="17" r="4.5"/>');
    expect(drawn).toContain('<rect class="whisker m-pass" x="57" y="8.72" width="50" height="16.56"/>');
  });

  it('draws a fail as a cross left of the limit', () => {
    const drawn = draw({ ...PASS, outcome: 'fail', margin: 2, marginBand: null });
    expect(drawn).toMatch(/<path class="m-fail open" stroke-width="2\.7" d="M28\.04 13\.04L35\.96 20\.96M28\.04 20\.96L35\.96 13\.04"\/>/);
  });

  it('draws an inconclusive reading as a half disc', () => {
    const drawn = draw({ ...PASS, outcome: 'inconclusive', margin: 1 });
    expect(drawn).toMatch(/<circle class="m-inconclusive blank"[^>]*cx="57"/);
    expect(drawn).toMatch(/<path class="m-inconclusive"/);
  });

  it('hatches a check that was not assessed from end to end and puts no mark on it', () => {
    const drawn = draw({ ...PASS, outcome: 'notAssessed', margin: null, marginBand: null });
    expect(drawn).toContain('class="hatching"');
    expect(drawn).toContain('<rect class="anywhere" x="7" y="13" width="100" height="8"/>');
    expect(drawn).not.toMatch(/m-pass|m-fail|m-inconclusive/);
  });

  it('draws nothing for a check that does not apply', () => {
    expect(draw({ ...PASS, outcome: 'notApplicable', margin: null, marginBand: null })).toMatch(/^<svg[^>]*><\/svg>$/);
  });

  it('strokes the limit solid, dashed or dotted by the grade of its source', () => {
    const stroked = (grade: NonNullable<Finding['limit']>['grade']): string | undefined =>
      /class="limit ([a-z]+)"/.exec(draw({ ...PASS, limit: { ...PASS.limit!, grade } }))?.[1];
    expect(stroked('official-text')).toBe('official');
    expect(stroked('public-extract')).toBe('secondary');
    expect(stroked('secondary')).toBe('secondary');
    expect(stroked('common-practice')).toBe('memory');
    expect(stroked('reasoned')).toBe('memory');
    expect(stroked('memory')).toBe('memory');
  });

  it('stands the short stroke of basic where half of reinforced lies', () => {
    expect(draw(CREEPAGE)).toContain('<path class="limit rung secondary" d="M32 9.52V24.48"/>');
    expect(draw({ ...CREEPAGE, others: [] })).not.toContain('rung');
  });

  it('has one stroke only where basic is enough', () => {
    expect(draw({ ...CREEPAGE, limit: { ...CREEPAGE.limit!, name: 'basic' } })).not.toContain('rung');
  });

  it('shows a value far beyond the scale at the end with an arrow and the factor', () => {
    const good = draw({ ...PASS, margin: 1 / 7.4, marginBand: null });
    expect(good).toContain('×7.4</text>');
    expect(good).toMatch(/d="M106\.1 12\.5l4\.5 4\.5l-4\.5 4\.5"/);
    const bad = draw({ ...PASS, outcome: 'fail', margin: 12.5, marginBand: null });
    expect(bad).toContain('×0.08</text>');
    expect(bad).toMatch(/d="M7\.9 12\.5l-4\.5 4\.5l4\.5 4\.5"/);
  });

  it('says factors with two digits at most', () => {
    expect([factorText(1 / 13.04), factorText(1 / 7.44), factorText(6), factorText(50), factorText(1 / 1287), factorText(50_000)]).toEqual([
      '×13',
      '×7.4',
      '×0.17',
      '×0.02',
      'over ×1000',
      'under ×0.001',
    ]);
  });

  it('draws a window as two strokes, its centre with an arrow on the good side', () => {
    const drawn = draw(
      findingOf('delivery/voltage-window', {
        outcome: 'pass',
        reason: 'met',
        measured: amountOf(12, 'V', 0.01),
        limit: limitOf('within', amountOf(11.4, 'V'), 'memory', { to: amountOf(12.6, 'V') }),
        margin: 0,
      }),
    );
    expect(drawn).toContain('<path class="limit two memory" d="M54.5 0V34M59.5 0V34"/>');
    expect(drawn).toMatch(/class="open m-pass"/);
    expect(drawn).not.toContain('×');
  });

  it('draws a yes or a no without an axis, left of, on or right of the limit', () => {
    const asked = findingOf('shock/bridging-part', {
      measured: { word: 'Y1' },
      limit: limitOf('oneOf', null, 'memory', { words: ['Y1'] }),
    });
    const centre = (outcome: Finding['outcome']): string | undefined => /class="halo" cx="([\d.]+)"/.exec(draw({ ...asked, outcome }))?.[1];
    expect(Number(centre('pass'))).toBeGreaterThan(57);
    expect(Number(centre('inconclusive'))).toBe(57);
    expect(Number(centre('fail'))).toBeLessThan(57);
    expect(draw({ ...asked, outcome: 'pass' })).not.toContain('class="good"');
  });

  it('draws a bridged barrier at the left end with an arrow', () => {
    const drawn = draw({ ...CREEPAGE, rung: 'bridgedOrAbsent', measured: { word: 'bridged' }, margin: null, marginBand: null });
    expect(drawn).toContain('class="open m-fail"');
    expect(drawn).toContain('class="bad"');
  });

  it('leaves a bound open on the side where the true value can lie', () => {
    const below = draw({ ...PASS, measured: amountOf(0.00025, 'A', null, 'below'), marginBand: null });
    expect(below).toContain('<rect class="whisker m-pass" x="82" y="8.72" width="25" height="16.56"/>');
    const above = draw({ ...PASS, measured: amountOf(0.00025, 'A', null, 'above'), outcome: 'inconclusive', marginBand: null });
    expect(above).toContain('<rect class="whisker m-inconclusive" x="7" y="8.72" width="75" height="16.56"/>');
  });

  it('keeps a narrow band visible', () => {
    expect(draw({ ...PASS, marginBand: [0.5, 0.5] })).toMatch(/class="whisker m-pass"[^>]* width="1"/);
  });

  it('draws only finite coordinates whatever the ratio is', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('pass', 'fail', 'inconclusive'),
        fc.option(fc.double({ min: 0, max: 1e9, noNaN: true })),
        (outcome, margin) => {
          const drawn = drawMarginLine(
            { ...PASS, outcome, margin, marginBand: margin === null ? null : [margin * 0.9, margin * 1.1] },
            MARGIN_LINE_ROW,
          ).markup;
          expect(drawn).not.toMatch(/NaN|Infinity|undefined/);
        },
      ),
    );
  });

  it('as a file of its own carries its namespace and its style, and nothing to load', () => {
    const file = toSvgFile(drawMarginLine(PASS, SIZE));
    expect(file).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" class="ml"/);
    expect(file).toContain('<style>');
    expect(file).not.toMatch(/<script|href|url\(/);
  });
});
