import type { ThermalPictureSheet } from '../result/assessment.ts';
import type { StepNode } from '../trace/step.ts';
import { findCondition } from '../working/bench/conditions-of.ts';
import type { Facts } from '../working/facts.ts';
import type { RegionReading } from '../working/heat/picture-facts.ts';
import { toAmount } from './to-finding.ts';

/** The thermal pictures on which something was drawn, region by region, and the steps that they name. */
export function toPictures({ pictures }: Facts): { pictures: ThermalPictureSheet[]; roots: StepNode[] } {
  const sheets = new Map<string, ThermalPictureSheet>();
  const roots: StepNode[] = [];
  for (const one of pictures.regions) {
    const { exhibit, reading } = one;
    const cover = findCondition(reading.under.cover);
    const sheet = sheets.get(exhibit.id) ?? {
      exhibit: exhibit.id,
      state: reading.state,
      cover: typeof cover === 'object' && cover !== null ? 'openedBefore' : cover,
      regions: [],
    };
    sheets.set(exhibit.id, sheet);
    sheet.regions.push(toRegion(one));
    if (reading.temperature !== null) roots.push(reading.temperature.step);
  }
  return { pictures: [...sheets.values()], roots };
}

function toRegion({ region, pixels, toKelvin, reading }: RegionReading): ThermalPictureSheet['regions'][number] {
  const { temperature, refused, place } = reading;
  return {
    id: region.id,
    name: place.name,
    points: region.points.map(([x, y]): [number, number] => [x, y]),
    takes: region.takes ?? 'hottest',
    hottest: toKelvin(pixels.hottest.value),
    hottestAt: [pixels.hottest.x, pixels.hottest.y],
    mean: toKelvin(pixels.mean),
    pixels: pixels.count,
    surface: temperature === null ? null : toAmount(temperature),
    refused,
    step: temperature === null ? null : temperature.step.id,
  };
}
