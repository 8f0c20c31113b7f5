import { extent } from 'd3-array';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup } from '../markup/markup.ts';

export interface CurveSize {
  readonly width: number;
  readonly height: number;
}

export interface CurveMargin {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface CurveFrame {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly right: number;
  readonly bottom: number;
  readonly drawn: Markup;
}

const HEADROOM = 0.12; // share of the range left free above and below
const FROM_ZERO = 0.6; // an axis whose data fill less than this share of the way from zero may start elsewhere, and says so
const TICKS_X = 6;
const TICKS_Y = 5;
const NARROW = 400;
const AFTER = 5;
const DESCENT = 4;
const BELOW = 15;
const END_OF_TITLE = 34;

/** Ends of an axis: from zero when the data nearly reach it, else around the data; never below a floor that the values keep to. */
export function reach(values: readonly number[], floor: number | null): [number, number] {
  const [least = 0, most = 1] = extent(values) as [number | undefined, number | undefined];
  const span = most - least || Math.abs(most) || 1;
  const low = least < span * FROM_ZERO ? Math.min(0, least) : least - span * HEADROOM;
  return [floor === null ? low : Math.max(floor, low), most + span * HEADROOM];
}

export interface CurveAxes {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly xUnit: string;
  readonly yUnit: string;
  /** How a number is written on the vertical axis; otherwise as it is. */
  readonly yText?: (value: number) => string;
}

/** Grid, feet and titles of a curve over current; where an axis does not start at zero, it says where. */
export function drawFrame(axes: CurveAxes, size: CurveSize, margin: CurveMargin): CurveFrame {
  const right = size.width - margin.right;
  const bottom = size.height - margin.bottom;
  const x = scaleLinear(axes.x, [margin.left, right]);
  const y = scaleLinear(axes.y, [bottom, margin.top]).nice(TICKS_Y);
  const xText = x.tickFormat(TICKS_X);
  const yText = axes.yText ?? y.tickFormat(TICKS_Y);
  const grid = y
    .ticks(TICKS_Y)
    .map(
      (tick) =>
        html`<path class="grid" d="M${margin.left} ${c(y(tick))}H${c(right)}"/><text class="ax" x="${margin.left - AFTER}" y="${c(y(tick) + DESCENT)}" text-anchor="end">${yText(tick)}</text>`,
    );
  const feet = x
    .ticks(size.width < NARROW ? TICKS_X / 2 : TICKS_X)
    .map(
      (tick) =>
        html`<path class="axis" d="M${c(x(tick))} ${c(bottom)}v4"/><text class="ax" x="${c(x(tick))}" y="${c(bottom + BELOW)}" text-anchor="middle">${xText(tick)}</text>`,
    );
  const [yStart = 0] = y.domain();
  const [xStart = 0] = x.domain();
  const yElsewhere = yStart === 0 ? '' : `, from ${yText(yStart)}`;
  const xElsewhere = xStart === 0 ? '' : `, from ${xText(xStart)}`;
  const drawn = html`${joined(grid)}<path class="axis" d="M${margin.left} ${c(bottom)}H${c(right)}"/>${joined(feet)}
<text class="ax strong" x="2" y="${c(margin.top - DESCENT * 2)}">${axes.yUnit}${yElsewhere}</text><text class="ax strong" x="${c(right)}" y="${c(bottom + END_OF_TITLE)}" text-anchor="end">${axes.xUnit}${xElsewhere}</text>`;
  return { x, y, right, bottom, drawn };
}
