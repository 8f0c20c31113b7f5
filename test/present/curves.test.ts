import { describe, expect, it } from 'vitest';
import type { Assessment, Curve, Finding } from '../../src/core/result/assessment.ts';
import { curveLabel, curvesByLevel } from '../../src/present/figure/curve-names.ts';
import { cutBelow } from '../../src/present/figure/cut-below.ts';
import {
  averagedPoints,
  drawEfficiencyCurve,
  EFFICIENCY_NARROW,
  EFFICIENCY_WIDE,
  efficiencyPoints,
  efficiencySentence,
} from '../../src/present/figure/efficiency-curve.ts';
import { drawLoadCurve, LOAD_CURVE_NARROW, LOAD_CURVE_WIDE, loadCurvesSentence } from '../../src/present/figure/load-curve.ts';
import { drawPortTable } from '../../src/present/figure/port-table.ts';
import { spreadLabels } from '../../src/present/figure/spread-labels.ts';
import { amountOf, assessmentOf, findingOf, limitOf, stepOf } from './build-assessment.ts';
import { fullAssessment } from './sample-assessment.ts';
import { CURVE } from './sample-findings.ts';

const SWEEP: Curve = {
  ...CURVE,
  points: [
    { i: 0, v: 12, U: null, pin: 0.1 },
    { i: 1, v: 12, U: null, pin: 15 },
    { i: 2, v: 11, U: null, pin: 27.5 },
    { i: 0.5, v: 12, U: null, pin: 8 },
    { i: 1.5, v: 12, U: null, pin: null },
  ],
};
const SHARES = [
  ['25', 0.75],
  ['50', 0.8],
  ['75', 0.8],
  ['100', 0.8],
] as const;

function efficient(more: Partial<Finding> = {}): Assessment {
  const steps = SHARES.map(([share, value]) => stepOf(`e/${share}`, { kind: 'formula', value, unit: '1', u: 0.001, show: 'percent' }));
  const average = stepOf('e/average', {
    kind: 'formula',
    value: 0.7875,
    unit: '1',
    u: 0.0025,
    show: 'percent',
    uses: SHARES.map(([share]) => ({ step: `e/${share}`, symbol: `η_${share}`, sensitivity: null })),
  });
  const finding = findingOf('delivery/efficiency', {
    subject: 'Lead~12 V',
    about: 'lead, 12 V',
    outcome: 'fail',
    reason: 'notMet',
    measured: amountOf(0.7875, '1', 0.0025),
    limit: limitOf('atLeast', amountOf(0.86, '1'), 'official-text', { name: 'ecodesign' }),
    margin: 1.09,
    show: 'percent',
    step: 'e/average',
    ...more,
  });
  return assessmentOf({ findings: [finding], steps: [...steps, average], curves: [SWEEP] });
}

describe('the efficiency curve', () => {
  it('is output over input power where both were read, in order of current', () => {
    // 12 V · 0.5 A / 8 W, 12 V · 1 A / 15 W, 11 V · 2 A / 27.5 W
    expect(efficiencyPoints(SWEEP)).toEqual([
      { i: 0.5, efficiency: 0.75 },
      { i: 1, efficiency: 0.8 },
      { i: 2, efficiency: 0.8 },
    ]);
  });

  it('rings the loads that are averaged at their share of the claimed current', () => {
    const assessed = efficient();
    const points = averagedPoints(
      assessed.findings.find(({ check }) => check === 'delivery/efficiency'),
      2,
      assessed,
    );
    expect(points).toEqual([
      { i: 0.5, efficiency: 0.75 },
      { i: 1, efficiency: 0.8 },
      { i: 1.5, efficiency: 0.8 },
      { i: 2, efficiency: 0.8 },
    ]);
    const drawn = drawEfficiencyCurve([SWEEP], assessed, EFFICIENCY_WIDE).markup;
    expect(drawn.match(/<circle class="ring"/g)).toHaveLength(4);
    expect(drawn.match(/<circle class="point"/g)).toHaveLength(3);
  });

  it('draws the least average as one line with the stroke of its grade, above an average that fails', () => {
    const drawn = drawEfficiencyCurve([SWEEP], efficient(), EFFICIENCY_WIDE).markup;
    const line = Number(/<path class="limit official" d="M[\d.]+ ([\d.]+)H/.exec(drawn)?.[1]);
    const [, top, bottom] = /<path class="m-fail open"[^>]*d="M[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)/.exec(drawn) ?? [];
    expect(line).toBeLessThan((Number(top) + Number(bottom)) / 2);
    expect(drawn).toContain('average 78.8\u00a0±\u00a00.5\u00a0%');
    expect(drawn).toContain('at least 86\u00a0%, ecodesign');
  });

  it('says in a sentence what it shows, also when there is no finding', () => {
    expect(efficiencySentence([SWEEP], efficient())).toBe(
      'the average of the four loads is 78.8\u00a0±\u00a00.5\u00a0%; asked for: at least 86\u00a0%, ecodesign; fail.',
    );
    expect(efficiencySentence([SWEEP], assessmentOf())).toContain('was not worked out');
  });

  it('is nothing where no input power was read, and never a number that is none', () => {
    expect(drawEfficiencyCurve([CURVE], efficient(), EFFICIENCY_WIDE).markup).toBe('');
    for (const assessed of [efficient(), efficient({ limit: null }), efficient({ measured: null, step: null }), assessmentOf()])
      for (const size of [EFFICIENCY_WIDE, EFFICIENCY_NARROW])
        for (const curves of [[SWEEP], [SWEEP, { ...SWEEP, mains: 115 }]])
          expect(drawEfficiencyCurve(curves, assessed, size).markup).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('several sweeps of one port and level', () => {
  const LOW: Curve = { ...CURVE, exhibit: 'sweep-2', mains: 115, frequency: 60, held: null, points: CURVE.points.slice(0, 5) };
  const both = [CURVE, LOW];

  it('lie over each other in one figure, each named by its mains at its last point, with points of another shape', () => {
    const drawn = drawLoadCurve(both, fullAssessment(), LOAD_CURVE_WIDE).markup;
    expect(drawn.match(/<path class="curve"/g)).toHaveLength(2);
    expect(drawn.match(/<circle class="point"/g)).toHaveLength(CURVE.points.length);
    const hollow = [...drawn.matchAll(/<circle class="point hollow" cx="([\d.]+)"/g)].map(([, x]) => Number(x));
    expect(hollow).toHaveLength(5);
    const name = Number(/<text class="says strong" x="([\d.]+)"[^>]*>115\u00a0V<\/text>/.exec(drawn)?.[1]);
    expect(name - Math.max(...hollow)).toBeCloseTo(8, 1);
    expect(drawn.match(/<rect class="claim"/g)).toHaveLength(1);
  });

  it('are told apart by mains alone where that is enough, and by what else differs where it is not', () => {
    expect(both.map((curve) => curveLabel(curve, both))).toEqual(['230\u00a0V', '115\u00a0V']);
    const turned = [CURVE, { ...CURVE, order: 'down' as const }];
    expect(turned.map((curve) => curveLabel(curve, turned))).toEqual(['230\u00a0V, load rising', '230\u00a0V, load falling']);
    const twins = [CURVE, { ...CURVE, exhibit: 'again' }];
    expect(twins.map((curve) => curveLabel(curve, twins))).toEqual(['230\u00a0V, sweep-1', '230\u00a0V, again']);
  });

  it('say what was held at the mains it was judged at, and claim nothing of the others', () => {
    const said = loadCurvesSentence(both, fullAssessment());
    expect(said).toContain('at 230\u00a0V held 1.725');
    expect(said).toContain('Laid over it: sweeps at 115\u00a0V.');
    expect(said).not.toContain('could not be told');
  });

  it('are gathered by port and level, each sweep once', () => {
    const other = { ...CURVE, level: '5 V' };
    expect(curvesByLevel({ curves: [CURVE, other, LOW] }).map((group) => group.map(({ exhibit, level }) => `${exhibit} ${level}`))).toEqual(
      [['sweep-1 12 V', 'sweep-2 12 V'], ['sweep-1 5 V']],
    );
  });

  it('keep inside a narrow figure', () => {
    const drawn = drawLoadCurve(both, fullAssessment(), LOAD_CURVE_NARROW).markup;
    const xs = [...drawn.matchAll(/ (?:x|cx)="([\d.]+)"/g)].map(([, x]) => Number(x));
    expect(Math.max(...xs)).toBeLessThanOrEqual(LOAD_CURVE_NARROW.width);
  });
});

describe('labels beside each other', () => {
  it('are moved apart downwards, keep their order, and come back up at the foot', () => {
    expect(spreadLabels([10, 50], 14, 100)).toEqual([10, 50]);
    expect(spreadLabels([20, 18, 21], 14, 100)).toEqual([32, 18, 46]);
    expect(spreadLabels([95, 99], 14, 100)).toEqual([86, 100]);
  });
});

describe('the table of outputs', () => {
  const claimed = findingOf('delivery/current', {
    subject: 'usb~5v',
    about: 'socket, 5 V',
    outcome: 'fail',
    reason: 'notMet',
    measured: amountOf(1.2, 'A', 0.03),
    limit: limitOf('atLeast', amountOf(2, 'A'), 'secondary', { name: 'claim' }),
    margin: 2 / 1.2,
    probability: 0.02,
  });
  const unread = findingOf('delivery/current', { subject: 'usb~9v', about: 'socket, 9 V' });
  const table = drawPortTable(
    assessmentOf({
      findings: [claimed, unread],
      claims: [
        {
          claim: 'socket, 5 V',
          claimed: amountOf(2, 'A'),
          measured: amountOf(1.2, 'A', 0.03),
          share: 0.6,
          probability: 0.02,
          finding: claimed.id,
        },
      ],
    }),
  ).markup;
  const cells = (row: number): string[] =>
    [...(table.split('<tr>')[row + 2] ?? '').matchAll(/<td[^>]*>([\s\S]*?)<\/td>/g)].map(([, cell]) => cell!.replace(/<[^>]+>/g, ''));

  it('has a row for each port and level: claimed, held, share, chance and the word', () => {
    expect(cells(0)).toEqual(['socket, 5 V', '2\u00a0A', '1.20\u00a0±\u00a00.06\u00a0A', '60\u00a0%', '2\u00a0%', 'fail']);
  });

  it('says of an output that nobody loaded that nothing was read, and links to no finding', () => {
    expect(cells(1)).toEqual(['socket, 9 V', 'not stated', 'not read', '', '', 'not assessed']);
    expect(table.match(/<a /g)).toHaveLength(1);
  });

  it('is nothing where no port is known', () => {
    expect(drawPortTable(assessmentOf()).markup).toBe('');
  });
});

describe('a line that falls below the axis', () => {
  it('is cut where it crosses, and what lies above stays as it is', () => {
    // from 0.25 to 0.75 over one ampere: half of the way at 0.5
    expect(
      cutBelow(
        [
          [0, 0.25],
          [1, 0.75],
          [2, 0.75],
          [3, 0.25],
        ],
        0.5,
      ),
    ).toEqual([
      [
        [0.5, 0.5],
        [1, 0.75],
        [2, 0.75],
        [2.5, 0.5],
      ],
    ]);
    expect(cutBelow([[1, 0.4]], 0.5)).toEqual([]);
  });

  it('leaves the loads that are averaged a readable axis, though a lighter load has next to no efficiency', () => {
    const light = { ...SWEEP, points: [{ i: 0.01, v: 12, U: null, pin: 6 }, ...SWEEP.points] };
    const drawn = drawEfficiencyCurve([light], efficient(), EFFICIENCY_WIDE).markup;
    const labels = [...drawn.matchAll(/text-anchor="end">([\d.]+)<\/text>/g)].map(([, label]) => Number(label));
    expect(Math.min(...labels)).toBeGreaterThan(60);
    expect(drawn.match(/<circle class="point"/g)).toHaveLength(3);
    const bottom = EFFICIENCY_WIDE.height - 40;
    const ys = [.../<path class="curve" d="([^"]+)"/.exec(drawn)![1]!.matchAll(/[ML][\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y));
    expect(Math.max(...ys)).toBeCloseTo(bottom, 1);
  });
});
