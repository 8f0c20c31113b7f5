import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../src/core/evidence/case.ts';
import type { Assessment, Finding } from '../../src/core/result/assessment.ts';
import type { ReadTable } from '../../src/core/working/bench/bench.ts';
import { regionPixels } from '../../src/core/working/heat/region-pixels.ts';
import { findingOf, judge, noteKeys } from './build-case.ts';
import { face, type PlaceInput, usbPort, WARM } from './evidence-pieces.ts';

type Picture = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'thermalPicture' }>;
type Region = Picture['regions'][number];

const SHA = 'a'.repeat(64);
const WIDTH = 20;
const HEIGHT = 16;
// one pixel of 70 °C at (5, 3), a patch of 60 °C beside it, 30 °C elsewhere; invented
const celsius = (x: number, y: number): number => (x === 5 && y === 3 ? 70 : x >= 4 && x < 8 && y >= 2 && y < 6 ? 60 : 30);

function picture(
  cell: (x: number, y: number) => number,
  more: Partial<ReadTable> & { unit?: string | null; doubts?: string[] } = {},
): ReadTable {
  const { unit = '°C', doubts = [], ...rest } = more;
  return {
    rows: HEIGHT,
    shape: 'matrix',
    columns: Array.from({ length: WIDTH }, (_, x) => ({
      name: `column ${x + 1}`,
      unit,
      values: Float64Array.from({ length: HEIGHT }, (__, y) => cell(x, y)),
      doubts,
    })),
    ...rest,
  };
}

const REGION: Region = {
  id: 'patch',
  place: 'face',
  points: [
    [3, 1],
    [9, 1],
    [9, 7],
    [3, 7],
  ],
};

interface Given {
  readonly table?: ReadTable;
  readonly exhibit?: Partial<Picture>;
  readonly region?: Partial<Region>;
  readonly place?: Partial<PlaceInput>;
  readonly media?: string;
}

function judged({ table = picture(celsius), exhibit = {}, region = {}, place = {}, media = 'text/csv' }: Given = {}): Assessment {
  return judge(
    {
      ports: [usbPort()],
      places: [{ ...face(), surface: 'plastic', ...place }],
      files: [{ id: 'p', path: 'picture.csv', sha256: SHA, bytes: 1, media }],
      exhibits: [
        {
          id: 'pic',
          kind: 'thermalPicture',
          under: { ...WARM, loads: [...WARM.loads] },
          file: 'p',
          scale: { unit: '°C' },
          cameraEmissivity: '0.94',
          reflected: '25 °C ± 0 K',
          regions: [{ ...REGION, ...region }],
          ...exhibit,
        },
      ],
    },
    media.startsWith('image/jpeg') ? new Map() : new Map([[SHA, table]]),
  );
}
const FINDING = 'burn/enclosure-temperature@face';
const celsiusOf = ({ measured }: Finding): number => (measured !== null && 'value' in measured ? measured.value - 273.15 : Number.NaN);
const warned = (assessment: Assessment): string[] => assessment.warnings.map(({ key }) => key);

describe('a region drawn on a thermal picture', () => {
  it('is judged like a spot reading, by its hottest pixel', () => {
    const finding = findingOf(judged(), FINDING);
    expect(celsiusOf(finding)).toBeCloseTo(70, 6);
    expect(finding.fields).toContain('/exhibits/pic/regions/patch');
  });

  it('tells the pixel, the number in the file and the scale that made it a temperature', () => {
    const step = judged().steps.find(({ id }) => id === '/exhibits/pic/regions/patch')!;
    expect(step.notes).toEqual([
      { key: 'hottestOfRegion', args: { x: 5, y: 3, hottestC: 70, meanC: 43.6, pixels: 36 } },
      { key: 'pictureScale', args: { value: 70, factor: 1, offset: 0, unit: '°C' } },
    ]);
  });

  it('is judged by its mean where that was asked for', () => {
    // 15 pixels of 60, one of 70 and 20 of 30 °C
    expect(celsiusOf(findingOf(judged({ region: { takes: 'mean' } }), FINDING))).toBeCloseTo((15 * 60 + 70 + 20 * 30) / 36, 6);
  });

  it.each([
    ['K', { unit: 'K' }, 273.15, 1],
    ['°F', { unit: '°F' }, 32, 1.8],
    ['raw numbers of 0.04 K', { unit: 'K', factor: 0.04 }, 273.15 / 0.04, 25],
    ['raw numbers of a tenth, from −100 °C', { unit: '°C', factor: 0.1, offset: -100 }, 1000, 10],
  ])('is the same temperature in %s', (_, scale, zero, times) => {
    const table = picture((x, y) => zero + celsius(x, y) * times, { unit: null, doubts: ['unit'] });
    const assessment = judged({ table, exhibit: { scale } });
    expect(celsiusOf(findingOf(assessment, FINDING))).toBeCloseTo(70, 6);
    expect(warned(assessment)).not.toContain('fileInDoubt');
  });

  it('on bare metal is refused, and counts again where tape was stuck on', () => {
    expect(noteKeys(findingOf(judged({ place: { surface: 'tinned' } }), FINDING))).toContain('bareMetal');
    const taped = findingOf(judged({ place: { surface: 'tinned' }, region: { surface: 'tapeVinyl' } }), FINDING);
    expect(taped.outcome).toBe('pass');
    expect(celsiusOf(taped)).toBeLessThan(70); // tape radiates 0.96, the camera stood at 0.94
  });

  it('states its own emissivity and what it reflects before anything else', () => {
    const { steps } = judged({ region: { emissivity: '0.80 ± 0.02', reflected: '30 °C ± 1 K' } });
    expect(steps.some(({ id }) => id === '/exhibits/pic/regions/patch/emissivity')).toBe(true);
    expect(steps.some(({ id }) => id === '/exhibits/pic/regions/patch/reflected')).toBe(true);
  });

  it('needs the emissivity that the camera was set to', () => {
    const { cameraEmissivity: _, ...without } = { cameraEmissivity: undefined };
    const assessment = judged({ exhibit: { ...without, cameraEmissivity: undefined } as Partial<Picture> });
    expect(noteKeys(findingOf(assessment, FINDING))).toContain('emissivityUnknown');
  });

  it('inside, seen with the lid off, is a bound from below and never a pass', () => {
    const inside = judged({
      place: { outside: false, surface: 'solderMask', laminate: 'fr4' },
      exhibit: { under: { ...WARM, cover: 'open' } } as never,
    });
    const board = inside.findings.find(({ check }) => check === 'fire/board-temperature')!;
    expect(board.outcome).not.toBe('pass');
  });
});

describe('a thermal picture that was struck', () => {
  it('is kept and counts for nothing, not even to be carried back to the opening', () => {
    const under = { ...WARM, cover: { openedBefore: '20 s' } } as never;
    const assessment = judged({
      exhibit: { struck: 'wrong unit on the bench', under },
      place: { outside: false, laminate: 'fr4', surface: 'solderMask' },
    });
    expect(assessment.findings.filter(({ check }) => check === 'fire/board-temperature')).toMatchObject([
      { outcome: 'notAssessed', reason: 'struck' },
    ]);
    expect(assessment.pictures![0]!.regions[0]).toMatchObject({ surface: null, step: null });
  });
});

describe('a picture that gives no temperatures says why, and nothing is guessed', () => {
  it.each<[string, Given, string]>([
    ['a photo', { media: 'image/jpeg' }, 'pictureHoldsNoNumbers'],
    ['a table', { table: picture(celsius, { shape: 'columns' }) }, 'pictureIsATable'],
    ['a unit that is none', { exhibit: { scale: { unit: 'counts' } } }, 'pictureUnitUnknown'],
    ['a file in °F that is said to be in °C', { table: picture(celsius, { unit: '°F' }) }, 'pictureUnitsDiffer'],
    ['a scale beside it', { table: picture(celsius, { doubts: ['scale-beside'] }) }, 'pictureInDoubt'],
    [
      'a region beside it',
      {
        region: {
          points: [
            [30, 30],
            [40, 30],
            [40, 40],
          ],
        },
      },
      'regionEmpty',
    ],
    ['a place that is not there', { region: { place: 'elsewhere' } }, 'regionWithoutPlace'],
  ])('%s', (_, given, key) => {
    const assessment = judged(given);
    expect(warned(assessment)).toContain(key);
    expect(assessment.findings.some(({ fields }) => fields.some((field) => field.startsWith('/exhibits/pic/regions')))).toBe(false);
    expect(assessment.unjudged.map(({ exhibit }) => exhibit)).toContain('pic');
  });
});

describe('pixels inside an outline', () => {
  const ones = picture(() => 1);

  it('are those whose middle is inside: a circle of radius 6 holds π · 36 of them, but for its rim', () => {
    const circle = Array.from({ length: 96 }, (_, k): [number, number] => [
      10 + 6 * Math.cos((2 * Math.PI * k) / 96),
      8 + 6 * Math.sin((2 * Math.PI * k) / 96),
    ]);
    expect(Math.abs(regionPixels(circle, ones)!.count - Math.PI * 36)).toBeLessThan(6);
  });

  it('of a triangle are half of those of its rectangle', () => {
    const triangle: [number, number][] = [
      [0, 0],
      [16, 0],
      [0, 16],
    ];
    expect(Math.abs(regionPixels(triangle, ones)!.count - 128)).toBeLessThanOrEqual(8);
  });

  it('without a number are counted and left out', () => {
    const holed = picture((x, y) => (x === 5 && y === 3 ? Number.NaN : celsius(x, y)));
    expect(regionPixels(REGION.points, holed)).toMatchObject({ count: 35, without: 1, hottest: { value: 60 } });
  });
});
