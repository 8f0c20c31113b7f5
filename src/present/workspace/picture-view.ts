import { ZERO_CELSIUS_K } from '../../core/quantity/unit.ts';
import type { ThermalPictureSheet } from '../../core/result/assessment.ts';
import { setAmount } from '../report/quantity.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { NOTES } from '../words/notes.ts';

/** What was read in each region of one thermal picture, as the page lists it. */
export interface PictureView {
  readonly exhibit: string;
  readonly regions: readonly RegionView[];
}

export interface RegionView {
  readonly id: string;
  readonly name: string;
  /** As the camera shows them, in °C. */
  readonly hottest: string;
  readonly mean: string;
  readonly hottestAt: readonly [number, number];
  /** Temperature of the surface, emissivity taken into account; empty where it was refused. */
  readonly valueHtml: string;
  readonly step: string | null;
  /** Why there is none. */
  readonly refused: string;
}

export function toPictureView({ exhibit, regions }: ThermalPictureSheet): PictureView {
  return {
    exhibit,
    regions: regions.map(({ id, name, hottest, hottestAt, mean, surface, step, refused }) => ({
      id,
      name,
      hottest: celsiusText(hottest),
      mean: celsiusText(mean),
      hottestAt,
      valueHtml: surface === null ? '' : setAmount(surface).markup,
      step,
      refused: refused === null ? '' : sentenceFor(NOTES, refused, {}),
    })),
  };
}

function celsiusText(kelvin: number): string {
  return (kelvin - ZERO_CELSIUS_K).toFixed(1);
}
