import { describe, expect, it } from 'vitest';
import { countCells, drawCoverageCells } from '../../src/present/figure/coverage-cells.ts';
import { drawLoadCurve, LOAD_CURVE_NARROW, LOAD_CURVE_WIDE, loadCurveSentence } from '../../src/present/figure/load-curve.ts';
import { countOutcomes, toPortrait } from '../../src/present/figure/portrait-rows.ts';
import { drawVerdictHalves, getFailureHalf } from '../../src/present/figure/verdict-halves.ts';
import { assessmentOf } from './build-assessment.ts';
import { fullAssessment } from './sample-assessment.ts';
import { CURVE } from './sample-findings.ts';

const FULL = fullAssessment();

describe('coverage cells', () => {
  it('count a check as settled whichever way it went, and leave out checks that do not apply', () => {
    const cells = (['settled', 'settled', 'inconclusive', 'notAssessed', 'notApplicable'] as const).map((state, index) => ({
      check: `${index}`,
      state,
    }));
    expect(countCells(cells)).toEqual({ settled: 2, of: 4 });
    const drawn = drawCoverageCells(cells).markup;
    expect(drawn.match(/<rect class="f"/g)).toHaveLength(2);
    expect(drawn.match(/<path class="f"/g)).toHaveLength(1);
    expect(drawn.match(/<path class="h"/g)).toHaveLength(1);
  });

  it('begin a second row after ten', () => {
    expect(
      drawCoverageCells(Array.from({ length: 11 }, (_, index) => ({ check: `${index}`, state: 'settled' as const }))).markup,
    ).toContain('<rect class="f" x="0" y="13"');
  });
});

describe('the verdict in two halves', () => {
  it('is one group that speaks both halves', () => {
    expect(drawVerdictHalves(FULL).markup).toContain(
      'role="group" aria-label="Verdict in two parts. Worst failure: Dangerous, below basic: creepage, second winding to first, over the winding edge. Coverage: shock partly examined, fire partly examined."',
    );
  });

  it('leads with the number that decided where the finding has no rung', () => {
    expect(
      getFailureHalf({ ...FULL, verdict: { ...FULL.verdict, failure: 'Below its claims', decidedBy: ['delivery/current@lead'] } }).second,
    ).toBe('Current held: 1.725\u00a0±\u00a00.017\u00a0A, at least 2\u00a0A');
  });

  it('weighs a danger and an unexamined unit the same, and a mild failure less', () => {
    const classes = (verdict: Partial<typeof FULL.verdict>): string[] =>
      [...drawVerdictHalves(assessmentOf({}, verdict)).markup.matchAll(/class="half ([a-z-]+)"/g)].map(([, name]) => name!);
    expect(classes({ failure: 'Dangerous' })).toEqual(['grave', 'cv-none']);
    expect(classes({ failure: 'Below its claims', coverage: { shock: 'examined', fire: 'partly examined' } })).toEqual(['mild', 'cv-part']);
    expect(classes({ failure: 'Nothing found wrong', coverage: { shock: 'examined', fire: 'examined' } })).toEqual(['clear', 'cv-full']);
  });
});

describe('the portrait', () => {
  it('shows each check once, as the worst of its findings', () => {
    const shock = toPortrait(FULL).find(({ hazard }) => hazard === 'shock');
    const creepage = shock?.rows.filter(({ finding }) => finding.check === 'shock/creepage');
    expect(creepage?.map(({ finding, others }) => [finding.id, others])).toEqual([['shock/creepage@edge', 1]]);
    expect(shock?.notApplicable).toBe(1);
  });

  it('counts every check exactly once', () => {
    const sum = [...countOutcomes(FULL).values()].reduce((total, count) => total + count, 0);
    expect(sum).toBe(new Set(FULL.findings.map(({ check }) => check)).size);
  });

  it('gathers many unread checks into one hatched row, and draws a few one by one', () => {
    const groups = toPortrait(FULL);
    expect(groups.find(({ hazard }) => hazard === 'fire')?.unread).toHaveLength(17);
    expect(groups.find(({ hazard }) => hazard === 'labelling')?.rows).toHaveLength(3);
  });
});

describe('the load curve', () => {
  it('draws the claim as a box from zero to the claimed current inside the window', () => {
    const drawn = drawLoadCurve(CURVE, FULL, LOAD_CURVE_WIDE).markup;
    const box = /<rect class="claim" x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"\/>/.exec(drawn);
    const claimed = /<path class="claimed" d="M([\d.]+) /.exec(drawn);
    expect(Number(box?.[1]) + Number(box?.[3])).toBeCloseTo(Number(claimed?.[1]), 1);
    expect(drawn.match(/<circle class="point"/g)).toHaveLength(CURVE.points.length);
    expect(drawn.match(/<path class="spread"/g)).toHaveLength(CURVE.points.length);
  });

  it('marks where the current held lies, between the points on either side, with its number', () => {
    const drawn = drawLoadCurve(CURVE, FULL, LOAD_CURVE_WIDE).markup;
    const x = Number(/<path class="crossing m-fail" d="M([\d.]+) /.exec(drawn)?.[1]);
    const dots = [...drawn.matchAll(/<circle class="point" cx="([\d.]+)"/g)].map(([, cx]) => Number(cx));
    expect(x).toBeGreaterThan(dots[6]!);
    expect(x).toBeLessThan(dots[7]!);
    expect(drawn).toContain('held 1.725\u00a0±\u00a00.017\u00a0A, fail');
  });

  it('writes where an axis starts that does not start at zero', () => {
    expect(drawLoadCurve(CURVE, FULL, LOAD_CURVE_WIDE).markup).toContain('>V, from 10.0<');
    const low = { ...CURVE, window: null, points: CURVE.points.map((point) => ({ ...point, v: point.i })) };
    expect(drawLoadCurve(low, FULL, LOAD_CURVE_WIDE).markup).toContain('>V<');
  });

  it('says in a sentence what it shows, also when nothing could be told', () => {
    expect(loadCurveSentence(CURVE, FULL)).toBe(
      'held 1.725\u00a0±\u00a00.017\u00a0A of 2\u00a0A claimed inside 11.4\u00a0V to 12.6\u00a0V; it leaves the window there.',
    );
    expect(loadCurveSentence({ ...CURVE, held: null, ends: null }, FULL)).toContain('could not be told');
    expect(loadCurveSentence({ ...CURVE, held: null, points: [] }, FULL)).toContain('no point');
  });

  it('is drawn without a number that is none, with one point, no point, or without claim and window', () => {
    const odd = [
      { ...CURVE, points: [] },
      { ...CURVE, points: [CURVE.points[0]!] },
      { ...CURVE, claim: null, window: null, held: null },
      { ...CURVE, points: [{ i: 0, v: 0, U: null, pin: null }], claim: null, window: null },
    ];
    for (const curve of odd)
      for (const size of [LOAD_CURVE_WIDE, LOAD_CURVE_NARROW])
        expect(drawLoadCurve(curve, FULL, size).markup).not.toMatch(/NaN|Infinity|undefined/);
  });
});
