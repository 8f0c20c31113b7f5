import { ZERO_CELSIUS_K } from '../../core/quantity/unit.ts';
import type { Assessment, SoakCurve } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { kelvinText, soakSentence } from '../words/soak-words.ts';
import { type CurveFrame, type CurveSize, drawFrame, reach } from './curve-frame.ts';
import { outcomeClass } from './outcome-mark.ts';
import { spreadLabels } from './spread-labels.ts';

export const SOAK_WIDE: CurveSize = { width: 640, height: 300 };
export const SOAK_NARROW: CurveSize = { width: 330, height: 260 };

const MARGIN = { left: 40, right: 24, top: 22, bottom: 40 };
const MINUTE_S = 60;
const END_WIDTH = 10; // of the band at the right edge
const LEAST_BAND = 1; // pixel, so that a narrow one still shows
const CLEAR = 6;
const DESCENT = 4;
const LINE = 14;
const ABOVE = 5; // a label stands over its line
const DOT = 1.3;

interface Labelled {
  readonly y: number;
  readonly text: string;
  readonly kind: string;
}

/** Logged temperature over minutes: readings, the fitted curve dashed, other ground where reading ends, the end as a band, and the limits at the ambient of the log. */
export function drawSoakCurve(soak: SoakCurve, assessment: Pick<Assessment, 'findings'>, size: CurveSize): Markup {
  if (soak.points.length === 0) return NOTHING;
  const label = `Soak: ${soakSentence(soak)}`;
  return html`<svg class="ml fig load soak" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="${label}">${drawInside(soak, assessment, size)}</svg>`;
}

function drawInside(soak: SoakCurve, assessment: Pick<Assessment, 'findings'>, size: CurveSize): Markup {
  const { points, curve, fit, limits, stop } = soak;
  const minutes = [...points, ...curve].map(([seconds]) => seconds / MINUTE_S);
  const band = fit === null ? [] : [fit.end - (fit.U ?? 0), fit.end + (fit.U ?? 0)];
  const heights = [...points.map(([, kelvin]) => kelvin), ...band, ...limits.map(({ at }) => at), ...(stop === null ? [] : [stop.at])];
  const degrees = heights.map(toCelsius);
  const frame = drawFrame({ x: [0, Math.max(...minutes)], y: reach(degrees, null), xUnit: 'min', yUnit: '°C' }, size, MARGIN);
  const readUntil = (points.at(-1)?.[0] ?? 0) / MINUTE_S;
  const [, top] = frame.y.range() as [number, number];
  const ahead =
    fit === null
      ? NOTHING
      : html`<rect class="claim" x="${c(frame.x(readUntil))}" y="${c(top)}" width="${c(frame.right - frame.x(readUntil))}" height="${c(frame.bottom - top)}"/><text class="ax" x="${c(frame.right)}" y="${c(frame.bottom - CLEAR)}" text-anchor="end">not read</text>`;
  return html`${ahead}${frame.drawn}${drawReadings(points, frame)}${drawFit(curve, frame)}${drawEnd(fit, frame)}${drawLines(soak, assessment, frame)}${drawChanges(soak, frame)}`;
}

const toCelsius = (kelvin: number): number => kelvin - ZERO_CELSIUS_K;

function drawReadings(points: SoakCurve['points'], { x, y }: CurveFrame): Markup {
  return joined(
    points.map(
      ([seconds, kelvin]) => html`<circle class="point" cx="${c(x(seconds / MINUTE_S))}" cy="${c(y(toCelsius(kelvin)))}" r="${DOT}"/>`,
    ),
  );
}

function drawFit(curve: SoakCurve['curve'], { x, y }: CurveFrame): Markup {
  if (curve.length === 0) return NOTHING;
  const path = curve.map(([seconds, kelvin], index) => `${index === 0 ? 'M' : 'L'}${c(x(seconds / MINUTE_S))} ${c(y(toCelsius(kelvin)))}`);
  return html`<path class="model" d="${path.join('')}"/>`;
}

/** The end with its 95 % interval, at the right edge. */
function drawEnd(fit: SoakCurve['fit'], { y, right }: CurveFrame): Markup {
  if (fit === null) return NOTHING;
  const middle = y(toCelsius(fit.end));
  const half = fit.U === null ? 0 : Math.max(LEAST_BAND, middle - y(toCelsius(fit.end + fit.U)));
  const band = html`<rect class="end" x="${c(right)}" y="${c(middle - half)}" width="${END_WIDTH}" height="${c(2 * half)}"/><path class="at-end" d="M${c(right)} ${c(middle)}h${END_WIDTH}"/>`;
  return band;
}

/** Limits, the temperature at which to end the soak, and the end, each with its number; labels moved apart. */
function drawLines({ limits, stop, fit }: SoakCurve, { findings }: Pick<Assessment, 'findings'>, frame: CurveFrame): Markup {
  const { x, y, right, bottom } = frame;
  const lines: Labelled[] = [];
  if (fit !== null)
    lines.push({ y: y(toCelsius(fit.end)), text: `heading for ${kelvinText(fit.end, fit.U === null ? null : fit.U / 2)}`, kind: 'says' });
  for (const { finding, at } of limits) {
    const own = findings.find(({ id }) => id === finding);
    const limit = own?.limit?.at;
    const says =
      limit === undefined || limit.value === at ? 'limit' : `limit, ${kelvinText(limit.value, null)} at the highest ambient, is here`;
    lines.push({
      y: y(toCelsius(at)),
      text: `${says} ${kelvinText(at, null)}`,
      kind: `limit ${outcomeClass(own?.outcome ?? 'notAssessed')}`,
    });
  }
  if (stop !== null) lines.push({ y: y(toCelsius(stop.at)), text: `end the soak at ${kelvinText(stop.at, null)}`, kind: 'stop' });
  const heights = spreadLabels(
    lines.map((line) => line.y - ABOVE),
    LINE,
    bottom - DESCENT,
  );
  return joined(
    lines.map((line, index) => {
      const stroke = line.kind === 'says' ? NOTHING : html`<path class="${line.kind}" d="M${c(x(0))} ${c(line.y)}H${c(right)}"/>`;
      return html`${stroke}<text class="says" x="${c(right - CLEAR)}" y="${c(heights[index] ?? line.y)}" text-anchor="end">${line.text}</text>`;
    }),
  );
}

/** Where something changed: what lies before it was not used. */
function drawChanges({ changes, fit }: SoakCurve, { x, y, bottom }: CurveFrame): Markup {
  const [, top] = y.range() as [number, number];
  return joined(
    changes
      .filter(({ atS }) => fit !== null && atS > 0)
      .map(({ atS }) => html`<path class="claimed" d="M${c(x(atS / MINUTE_S))} ${c(top)}V${c(bottom)}"/>`),
  );
}
