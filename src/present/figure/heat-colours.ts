/**
 * Colours for temperatures, made by formula in Oklab (B. Ottosson, 2020): lightness grows in equal steps from cold to hot, and the hue follows one
 * bow from the colour that passes in this project (sea) past the one that fails (rust) to the one in between (gorse). Who cannot tell the hues
 * apart still has the lightness.
 */
const DARKEST = 0.24;
const LIGHTEST = 0.95;
type Hue = readonly [a: number, b: number]; // green to red, blue to yellow
const SEA: Hue = [-0.03, -0.045];
const PAST_RUST: Hue = [0.16, 0.085]; // the bow is drawn towards it and does not reach it
const GORSE: Hue = [-0.005, 0.09];
const BYTE = 255;

/** Red, green and blue, 0 to 255, for a share from 0 (coldest) to 1 (hottest). */
export function heatColour(share: number): readonly [number, number, number] {
  const t = Math.min(1, Math.max(0, share));
  const bow = (axis: 0 | 1): number => (1 - t) * (1 - t) * SEA[axis] + 2 * t * (1 - t) * PAST_RUST[axis] + t * t * GORSE[axis];
  return toBytes(DARKEST + (LIGHTEST - DARKEST) * t, bow(0), bow(1));
}

/** `#rrggbb` of the same. */
export function heatHex(share: number): string {
  return `#${heatColour(share)
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')}`;
}

/** Oklab to sRGB: the matrices of Ottosson’s page, the curve of IEC 61966-2-1. */
function toBytes(lightness: number, a: number, b: number): readonly [number, number, number] {
  const cube = (x: number): number => x * x * x;
  const l = cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
  const m = cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
  const s = cube(lightness - 0.0894841775 * a - 1.291485548 * b);
  return [
    toByte(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
    toByte(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
    toByte(-0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s),
  ];
}

function toByte(linear: number): number {
  const x = Math.min(1, Math.max(0, linear));
  const curved = x <= 0.0031308 ? 12.92 * x : 1.055 * x ** (1 / 2.4) - 0.055;
  return Math.round(BYTE * curved);
}
