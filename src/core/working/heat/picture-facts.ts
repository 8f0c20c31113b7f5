import type { ExhibitOf } from '../../evidence/case.ts';
import { SI_UNIT, ZERO_CELSIUS_K } from '../../quantity/unit.ts';
import { type Derived, withNotes } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, fieldOfCondition, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened } from '../bench/open-value.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import { pictureScale } from './picture-scale.ts';
import { type RegionPixels, regionPixels } from './region-pixels.ts';
import { seenByCamera } from './seen-by-camera.ts';
import { missingConditions, type SpotReading, temperatureOf } from './spot-facts.ts';
import { stateOfLoads } from './state-of-loads.ts';

type Picture = ExhibitOf<'thermalPicture'>;
type Region = Picture['regions'][number];

/** The regions of thermal pictures as readings of their places, and pictures and regions that give none, with the reason. */
export interface PictureFacts {
  readonly readings: readonly SpotReading[];
  readonly regions: readonly RegionReading[];
  readonly troubles: readonly { readonly key: string; readonly at: string; readonly args: Readonly<Record<string, string>> }[];
}

/** One region with what the camera shows inside it. */
export interface RegionReading {
  readonly exhibit: Picture;
  readonly region: Region;
  readonly pixels: RegionPixels;
  readonly toKelvin: (value: number) => number;
  readonly reading: SpotReading;
}

const LAST_DIGIT_K = 0.1; // of cameras that state none; their accuracy is kelvin

export function pictureFacts(bench: Bench, levels: readonly LevelFacts[]): PictureFacts {
  const regions: RegionReading[] = [];
  const troubles: PictureFacts['troubles'][number][] = [];
  for (const exhibit of exhibitsOf(bench, 'thermalPicture')) {
    const file = bench.files.get(exhibit.file);
    const table = file === undefined ? undefined : bench.tables.get(file.sha256);
    const toKelvin = pictureScale(exhibit, table);
    if (typeof toKelvin === 'string') {
      const said = table?.columns[0]?.unit ?? '';
      troubles.push({ key: toKelvin, at: `/exhibits/${exhibit.id}`, args: { path: file?.path ?? '', unit: exhibit.scale.unit, said } });
      continue;
    }
    for (const region of exhibit.regions) {
      const pixels = regionPixels(region.points, table!);
      const read = pixels === null ? null : readRegion(bench, levels, { exhibit, region, pixels, toKelvin });
      if (read !== null) regions.push({ exhibit, region, pixels: pixels!, toKelvin, reading: read });
      else
        troubles.push({
          key: pixels === null ? 'regionEmpty' : 'regionWithoutPlace',
          at: `/exhibits/${exhibit.id}/regions/${region.id}`,
          args: { place: region.place },
        });
    }
  }
  return { readings: regions.map(({ reading }) => reading), regions, troubles };
}

type Drawn = Omit<RegionReading, 'reading'>;

function readRegion(bench: Bench, levels: readonly LevelFacts[], drawn: Drawn): SpotReading | null {
  const { exhibit, region } = drawn;
  const place = bench.places.get(region.place);
  if (place === undefined) return null;
  const field = `/exhibits/${exhibit.id}/regions/${region.id}`;
  const under = conditionsOf(bench, exhibit);
  const ambientAt = fieldOfCondition(exhibit, 'ambient', field, undefined);
  const ambient = temperatureOf(bench, findCondition(under.ambient), ambientAt, exhibit.day, 'T_a');
  const reflected =
    temperatureOf(bench, findRead(region.reflected), `${field}/reflected`, exhibit.day, 'T_r') ??
    temperatureOf(bench, findRead(exhibit.reflected), `/exhibits/${exhibit.id}/reflected`, exhibit.day, 'T_r') ??
    ambient;
  const cover = findCondition(under.cover);
  const opened: Opened<string> =
    exhibit.struck === undefined ? { state: 'read', v: '', read: { v: '' } } : { state: 'struck', because: exhibit.struck };
  const common = {
    place,
    field,
    opened,
    under,
    ambient,
    missing: missingConditions(under),
    atLeast: place.outside !== true && cover !== null && cover !== 'closed',
    state: stateOfLoads(levels, under),
  };
  if (opened.state !== 'read') return { ...common, temperature: null, refused: null };
  return {
    ...common,
    ...seenByCamera({
      of: [
        { ...region, id: `${exhibit.id}/${region.id}`, at: field },
        { ...place, at: `/places/${place.id}` },
      ],
      shown: shownIn(bench, drawn, field),
      set: exhibit.cameraEmissivity,
      field: `/exhibits/${exhibit.id}/cameraEmissivity`,
      reflected,
      id: `${exhibit.id}/${region.id}`,
    }),
  };
}

/** What the camera shows of a region: its hottest pixel, or the mean of all, with where it stands and by which scale it was read. */
function shownIn(bench: Bench, { exhibit, region, pixels, toKelvin }: Drawn, field: string): Derived {
  const { hottest, mean, count, without } = pixels;
  const takesMean = region.takes === 'mean';
  const shown = deriveReading(
    bench,
    {
      text: '',
      kind: 'temperature',
      value: toKelvin(takesMean ? mean : hottest.value),
      unit: SI_UNIT.temperature,
      u: null,
      lastDigit: LAST_DIGIT_K,
    },
    { field, role: 'temperature', day: exhibit.day, instrument: exhibit.instrument, symbol: 'T_c' },
  );
  const [hottestC, meanC] = [hottest.value, mean].map((value) => inTenths(toKelvin(value) - ZERO_CELSIUS_K));
  const { unit, factor = 1, offset = 0 } = exhibit.scale;
  return withNotes(shown, [
    {
      key: takesMean ? 'meanOfRegion' : 'hottestOfRegion',
      args: { x: hottest.x, y: hottest.y, hottestC: hottestC!, meanC: meanC!, pixels: count },
    },
    { key: 'pictureScale', args: { value: hottest.value, factor, offset, unit } },
    ...(without === 0 ? [] : [{ key: 'pixelsWithoutNumber', args: { pixels: without } }]),
  ]);
}

function inTenths(value: number): number {
  return Math.round(value / LAST_DIGIT_K) / Math.round(1 / LAST_DIGIT_K);
}
