import { describe, expect, it } from 'vitest';
import type { Assessment, Finding, ThermalPictureSheet } from '../../src/core/result/assessment.ts';
import { heatColour } from '../../src/present/figure/heat-colours.ts';
import { isothermPath, isotherms, roundLevels, smoothedCopy } from '../../src/present/figure/isotherms.ts';
import { drawLifeChart } from '../../src/present/figure/life-chart.ts';
import { drawThermalPicture } from '../../src/present/figure/thermal-picture.ts';
import { thermalFigures } from '../../src/present/report/thermal-picture.ts';

const STEPS = 32;
const linear = (byte: number): number => {
  const c = byte / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
};
type Rgb = readonly [number, number, number];
const ramp = Array.from({ length: STEPS + 1 }, (_, k) => heatColour(k / STEPS));

/** Linear light to CIELAB under D65 (IEC 61966-2-1 and CIE 15): another space than the one the colours are made in. */
function toLab([r, g, b]: Rgb): Rgb {
  const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27 / 116) * t + 16 / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** What who lacks one kind of cone sees: Viénot, Brettel and Mollon 1999, in linear light. */
const PROTAN = [
  [0.11238, 0.88762, 0],
  [0.11238, 0.88762, 0],
  [0.00401, -0.00401, 1],
];
const DEUTAN = [
  [0.29275, 0.70725, 0],
  [0.29275, 0.70725, 0],
  [-0.02234, 0.02234, 1],
];
const through = (matrix: readonly (readonly number[])[], light: Rgb): Rgb =>
  matrix.map((row) => row.reduce((sum, each, k) => sum + each * light[k]!, 0)) as unknown as Rgb;

describe('the colours of a thermal picture', () => {
  it('grow lighter at every step, by nearly the same', () => {
    const lightness = ramp.map((colour) => toLab(colour.map(linear) as unknown as Rgb)[0]);
    const steps = lightness.slice(1).map((value, k) => value - lightness[k]!);
    expect(Math.min(...steps)).toBeGreaterThan(1.5);
    expect(Math.max(...steps) / Math.min(...steps)).toBeLessThan(1.8);
  });

  it.each([
    ['red', PROTAN],
    ['green', DEUTAN],
  ])('tell hot from cold for eyes without the cones for %s', (_, matrix) => {
    const seen = ramp.map((colour) => toLab(through(matrix, colour.map(linear) as unknown as Rgb)));
    for (let k = 1; k < seen.length; k += 1) {
      expect(seen[k]![0]).toBeGreaterThan(seen[k - 1]![0]);
      // two colours a quarter of the scale apart are far apart
      if (k >= STEPS / 4) {
        const before = seen[k - STEPS / 4]!;
        expect(Math.hypot(...seen[k]!.map((value, axis) => value - before[axis]!))).toBeGreaterThan(12);
      }
    }
  });

  it('stay at their ends beyond the scale', () => {
    expect([heatColour(-1), heatColour(2)]).toEqual([heatColour(0), heatColour(1)]);
  });
});

const SIDE = 200;
/** A cone: 100 in the middle, one less for each pixel away from it. Its lines are circles, known by hand. */
const cone = {
  width: SIDE,
  height: SIDE,
  values: Float64Array.from(
    { length: SIDE * SIDE },
    (_, at) => 100 - Math.hypot((at % SIDE) + 0.5 - 100, Math.floor(at / SIDE) + 0.5 - 100),
  ),
};

describe('lines of equal temperature', () => {
  it.each([40, 60, 80])('of a cone at %d are circles round its top', (level) => {
    const [line] = isotherms(cone, [level]);
    expect(line!.rings).toHaveLength(1);
    for (const [x, y] of line!.rings[0]!) expect(Math.abs(Math.hypot(x - 100, y - 100) - (100 - level))).toBeLessThan(0.5);
  });

  it('enclose what is warmer, by the even-odd rule: a cold hole in warm ground is a second ring', () => {
    const bowl = { ...cone, values: cone.values.map((value) => Math.min(value, 110 - value)) };
    const [line] = isotherms(bowl, [50]);
    expect(line!.rings).toHaveLength(2);
    const area = (ring: readonly (readonly [number, number])[]): number =>
      Math.abs(ring.reduce((sum, [x, y], k) => sum + x * ring[(k + 1) % ring.length]![1] - ring[(k + 1) % ring.length]![0] * y, 0)) / 2;
    const [small, large] = line!.rings.map(area).sort((a, b) => a - b);
    expect(Math.abs(large! / (Math.PI * 50 * 50) - 1)).toBeLessThan(0.01);
    expect(Math.abs(small! / (Math.PI * 40 * 40) - 1)).toBeLessThan(0.01);
  });

  it('close along the edge of the picture where it is warm up to there', () => {
    const [line] = isotherms({ width: 40, height: 30, values: new Float64Array(1200).fill(50) }, [40]);
    const xs = line!.rings[0]!.map(([x]) => x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([0, 40]);
    expect(isothermPath(line!)).toMatch(/^M.*Z$/);
    expect(isotherms({ width: 40, height: 30, values: new Float64Array(1200).fill(50) }, [60])[0]!.rings).toEqual([]);
  });

  it('pass by pixels without a number', () => {
    const holed = { ...cone, values: cone.values.map((value, at) => (at % 97 === 0 ? Number.NaN : value)) };
    const [line] = isotherms(holed, [60]);
    for (const [x, y] of line!.rings[0]!) expect(Math.abs(Math.hypot(x - 100, y - 100) - 40)).toBeLessThan(1);
  });

  it('stand at round degrees, about six of them', () => {
    expect(roundLevels(28.5, 82.7)).toEqual([30, 40, 50, 60, 70, 80]);
    expect(roundLevels(30, 33)).toEqual([30.5, 31, 31.5, 32, 32.5]);
    expect(roundLevels(30, 30)).toEqual([]);
  });

  it('are drawn through a copy of at most 120 pixels', () => {
    expect(Math.max(smoothedCopy({ width: 640, height: 480, values: new Float32Array(640 * 480) }).width)).toBeLessThanOrEqual(120);
  });
});

const SHEET: ThermalPictureSheet = {
  exhibit: 'pic',
  state: 'labelLoad',
  cover: 'open',
  regions: [
    {
      id: 'a',
      name: 'the top',
      points: [
        [80, 80],
        [120, 80],
        [120, 120],
        [80, 120],
      ],
      takes: 'hottest',
      hottest: 372.45,
      hottestAt: [100, 100],
      mean: 360,
      pixels: 1600,
      surface: { value: 374.15, unit: 'K', u: 1 },
      refused: null,
      step: 'x',
    },
    {
      id: 'b',
      name: 'a <b>',
      points: [],
      takes: 'mean',
      hottest: 300,
      hottestAt: [0, 0],
      mean: 299.15,
      pixels: 4,
      surface: null,
      refused: 'bareMetal',
      step: null,
    },
  ],
};

describe('a thermal picture on paper', () => {
  const drawn = drawThermalPicture(SHEET, cone, 400).markup;

  it('has a band for every round level, lighter where it is hotter, and the regions by number', () => {
    const fills = [...drawn.matchAll(/<path fill="(#[0-9a-f]{6})"/g)].map(([, fill]) => fill!);
    expect(fills).toHaveLength(roundLevels(Math.min(...cone.values), Math.max(...cone.values)).length);
    const light = fills.map((fill) => [1, 3, 5].reduce((sum, at) => sum + Number.parseInt(fill.slice(at, at + 2), 16), 0));
    expect(light).toEqual([...light].sort((a, b) => a - b));
    expect(drawn).toContain('>1</text>');
    expect(drawn).toContain('points="160,160 240,160 240,240 160,240"');
  });

  it('says what it shows, with names as text', () => {
    expect(drawn).toContain('the top 99.3 °C');
    expect(drawn).not.toContain('<b>');
  });

  it('tells below it what was read on each region, and why not', () => {
    const [figure] = thermalFigures({ pictures: [SHEET] } as unknown as Assessment, { thermal: new Map([['pic', cone]]) });
    expect(figure!.caption).toContain('1 the top: shown as 99.3 °C at the hottest, its surface 101.0');
    expect(figure!.caption).toContain('shown as 26.0 °C on average, a thermal picture of bare metal does not show its temperature');
    expect(figure!.caption).toContain('closed it is at least as hot');
    expect(thermalFigures({ pictures: [SHEET] } as unknown as Assessment, {})).toEqual([]);
  });
});

describe('the chart of lives', () => {
  const life = (id: string, hours: number, highest?: number): Finding =>
    ({
      id,
      check: 'endurance/capacitor-life',
      about: id,
      outcome: hours > 17_532 ? 'pass' : 'fail',
      measured: { value: hours * 3600, unit: 's', u: hours * 360 },
      limit: { at: { value: 17_532 * 3600, unit: 's', u: 0 }, grade: 'common-practice' },
      notes: highest === undefined ? [] : [{ key: 'lifeAtHighest', args: { hours: highest } }],
    }) as unknown as Finding;

  it('has the shortest life first, a tenfold life always as far to the right, and a hollow dot at the highest ambient', () => {
    const { markup } = drawLifeChart({ findings: [life('long', 30_000), life('short', 3000, 1500)] }, { width: 600 });
    const dots = [...markup.matchAll(/<circle class="[^"]*?(full|open)" cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, kind, x, y]) => ({
      kind,
      x: Number(x),
      y: Number(y),
    }));
    const [short, open, long] = dots as [(typeof dots)[0], (typeof dots)[0], (typeof dots)[0]];
    expect(dots.map(({ kind }) => kind)).toEqual(['full', 'open', 'full']);
    expect(short.y).toBeLessThan(long.y);
    // ln(10) and ln(2) on one scale
    expect((long.x - short.x) / (short.x - open.x)).toBeCloseTo(Math.log(10) / Math.log(2), 2);
  });

  it('is nothing where no life was worked out', () => {
    expect(drawLifeChart({ findings: [] }, { width: 600 }).markup).toBe('');
  });
});
