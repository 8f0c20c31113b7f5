import { ZERO_CELSIUS_K } from '../../core/quantity/unit.ts';
import type { ThermalPictureSheet } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { heatHex } from './heat-colours.ts';
import { isothermPath, isotherms, type NumberField, numberPlace, roundLevels } from './isotherms.ts';

export const THERMAL_WIDE = 420;
export const THERMAL_NARROW = 320;

const BAR = 10; // height of the colours under the picture
const UNDER = 34; // room for them and their numbers
const INK = '#14201e'; // colours of a picture do not follow the page
const PAPER = '#fbfcfa';
const LABEL = 12;
const TAG = 16;
const DIGIT_DOWN = 12;

/**
 * A thermal picture for paper: the ground between two lines of equal temperature in one colour, the lines with their degrees, the regions by number.
 * `field` in °C as the camera shows it.
 */
export function drawThermalPicture(sheet: ThermalPictureSheet, field: NumberField, width: number): Markup {
  const [least, greatest] = rangeOf(field);
  if (!(greatest > least)) return NOTHING;
  const scale = width / field.width;
  const height = field.height * scale;
  const levels = roundLevels(least, greatest);
  const share = (celsius: number): number => (celsius - least) / (greatest - least);
  const bands = isotherms(field, levels).map((line, index) => {
    const middle = (line.level + (levels[index + 1] ?? greatest)) / 2;
    const at = numberPlace(line, index);
    const number =
      at === null
        ? NOTHING
        : html`<text x="${c(inside(at[0] * scale, width))}" y="${c(inside(at[1] * scale, height))}" class="degrees" text-anchor="middle">${line.level}</text>`;
    return {
      fill: html`<path fill="${heatHex(share(middle))}" fill-rule="evenodd" stroke="${INK}" stroke-width="0.6" d="${isothermPath(line, scale)}"/>`,
      number,
    };
  });
  const ground = heatHex(share((least + (levels[0] ?? greatest)) / 2));
  const said = sheet.regions.map(({ name, hottest }) => `${name} ${celsiusText(hottest)}`).join('; ');
  const label = `Thermal picture ${sheet.exhibit}, ${least.toFixed(0)} to ${greatest.toFixed(0)} °C as the camera shows it: ${said}`;
  return html`<svg class="ml fig thermal-figure" width="${width}" height="${c(height + UNDER)}" viewBox="0 0 ${width} ${c(height + UNDER)}" role="img" aria-label="${label}"><rect width="${width}" height="${c(height)}" fill="${ground}"/>${joined(bands.map(({ fill }) => fill))}${joined(bands.map(({ number }) => number))}${drawRegions(sheet, scale)}${drawScale(levels, share, width, height)}</svg>`;
}

function drawRegions({ regions }: ThermalPictureSheet, scale: number): Markup {
  return joined(
    regions.map(({ points }, index) => {
      const at = points.map(([x, y]) => `${c(x * scale)},${c(y * scale)}`).join(' ');
      const [x, y] = [Math.min(...points.map((point) => point[0])) * scale, Math.min(...points.map((point) => point[1])) * scale];
      return html`<polygon points="${at}" fill="none" stroke="${PAPER}" stroke-width="3.5"/><polygon points="${at}" fill="none" stroke="${INK}" stroke-width="1.6"/><rect x="${c(x)}" y="${c(y)}" width="${TAG}" height="${TAG}" fill="${INK}"/><text class="tag" x="${c(x + TAG / 2)}" y="${c(y + DIGIT_DOWN)}" text-anchor="middle">${index + 1}</text>`;
    }),
  );
}

/** The colours as they stand in the picture, with the degrees between them. */
function drawScale(levels: readonly number[], share: (celsius: number) => number, width: number, height: number): Markup {
  const ends = [0, ...levels.map(share), 1];
  const steps = ends.slice(1).map((to, index) => {
    const from = ends[index] ?? 0;
    return html`<rect x="${c(from * width)}" y="${c(height + 6)}" width="${c((to - from) * width)}" height="${BAR}" fill="${heatHex((from + to) / 2)}"/>`;
  });
  const marks = levels.map(
    (level) =>
      html`<text class="ax" x="${c(inside(share(level) * width, width))}" y="${c(height + UNDER - 4)}" text-anchor="middle">${level}${level === levels.at(-1) ? ' °C' : ''}</text>`,
  );
  return html`${joined(steps)}${joined(marks)}`;
}

function inside(at: number, most: number): number {
  return Math.min(most - LABEL, Math.max(LABEL, at));
}

function rangeOf({ values }: NumberField): [number, number] {
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let at = 0; at < values.length; at += 1) {
    const value = values[at]!;
    if (value < least) least = value;
    if (value > greatest) greatest = value;
  }
  return [least, greatest];
}

export function celsiusText(kelvin: number): string {
  return `${(kelvin - ZERO_CELSIUS_K).toFixed(1)} °C`;
}
