import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import type { Assessment, Curve, Finding } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { SWEEP_ENDS } from '../words/case-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { drawMark, outcomeClass } from './outcome-mark.ts';

/** Output voltage over output current as it was judged, with the claim as a grey box and the current at which the window is left. */
export interface LoadCurveSize {
  readonly width: number;
  readonly height: number;
}

export const LOAD_CURVE_WIDE: LoadCurveSize = { width: 640, height: 300 };
export const LOAD_CURVE_NARROW: LoadCurveSize = { width: 330, height: 260 };

const MARGIN = { left: 46, right: 14, top: 22, bottom: 40 };
const HEADROOM = 0.12; // share of the range left free above and below
const TICKS_X = 6;
const TICKS_Y = 5;
const NARROW = 400;
const POINT = 2.4;
const CROSSING_MARK = 11;
const FROM_ZERO = 0.6; // an axis whose data fill less than this share of the way from zero may start elsewhere, and says so

interface Held {
  readonly current: number;
  readonly text: string;
}

export function drawLoadCurve(curve: Curve, assessment: Assessment, size: LoadCurveSize): Markup {
  const held = findHeld(curve, assessment);
  const finding = findJudged(curve, assessment);
  const label = `Load curve of ${curveName(curve, assessment)}: ${loadCurveSentence(curve, assessment)}`;
  return html`<svg class="ml fig load" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="${label}">${drawInside(curve, held, finding, size)}</svg>`;
}

/** What the figure says, with the number in it. */
export function loadCurveSentence(curve: Curve, assessment: Assessment): string {
  const held = findHeld(curve, assessment);
  const claim = curve.claim === null ? '' : ` of ${amountText({ value: curve.claim, unit: 'A', u: null })} claimed`;
  const window = curve.window === null ? '' : ` inside ${volts(curve.window[0])} to ${volts(curve.window[1])}`;
  const ends = curve.ends === null ? '' : `; ${sentenceFor(SWEEP_ENDS, curve.ends)}`;
  if (held === null)
    return curve.points.length === 0 ? 'no point of this sweep could be used.' : `how much it holds${window} could not be told${ends}.`;
  return `held ${held.text}${claim}${window}${ends}.`;
}

/** The output as the case calls it, where a finding about it says so. */
export function curveName(curve: Curve, assessment: Assessment): string {
  const subject = `${curve.port}~${curve.level}`;
  return (
    assessment.findings.find((finding) => finding.subject === subject && finding.about !== null)?.about ?? `${curve.port}, ${curve.level}`
  );
}

function volts(value: number): string {
  return amountText({ value, unit: 'V', u: null });
}

/** The step that gives the current held. */
function findHeld(curve: Curve, assessment: Assessment): Held | null {
  if (curve.held === null) return null;
  const step = assessment.steps.find(({ id }) => id === curve.held);
  if (step?.value === undefined || step.value === null || step.unit === null) return null;
  const { value, unit, u, side, show } = step;
  return { current: value, text: amountText({ value, unit, u, ...(side === undefined ? {} : { side }) }, show) };
}

function findJudged(curve: Curve, assessment: Assessment): Finding | null {
  if (curve.held === null) return null;
  return (
    assessment.findings.find(({ step, check }) => step === curve.held && check === 'delivery/current') ??
    assessment.findings.find(({ step }) => step === curve.held) ??
    null
  );
}

function drawInside(curve: Curve, held: Held | null, finding: Finding | null, size: LoadCurveSize): Markup {
  if (curve.points.length === 0) return html`<text x="${MARGIN.left}" y="${MARGIN.top}">no points</text>`;
  const right = size.width - MARGIN.right;
  const bottom = size.height - MARGIN.bottom;
  const currents = curve.points.map(({ i }) => i);
  const voltages = curve.points.flatMap(({ v, U }) => [v - (U ?? 0), v + (U ?? 0)]).concat(curve.window ?? []);
  const x = scaleLinear(reach([0, ...currents, curve.claim ?? 0, held?.current ?? 0], 0), [MARGIN.left, right]);
  const y = scaleLinear(reach(voltages, curve.points.every(({ v }) => v >= 0) ? 0 : null), [bottom, MARGIN.top]).nice(TICKS_Y);
  const yTicks = y.ticks(TICKS_Y);
  const xTicks = x.ticks(size.width < NARROW ? TICKS_X / 2 : TICKS_X);
  const xText = x.tickFormat(TICKS_X);
  const yText = y.tickFormat(TICKS_Y);
  const AFTER = 5;
  const DESCENT = 4;
  const grid = yTicks.map(
    (tick) =>
      html`<path class="grid" d="M${MARGIN.left} ${c(y(tick))}H${c(right)}"/><text class="ax" x="${MARGIN.left - AFTER}" y="${c(y(tick) + DESCENT)}" text-anchor="end">${yText(tick)}</text>`,
  );
  const BELOW = 15;
  const feet = xTicks.map(
    (tick) =>
      html`<path class="axis" d="M${c(x(tick))} ${c(bottom)}v4"/><text class="ax" x="${c(x(tick))}" y="${c(bottom + BELOW)}" text-anchor="middle">${xText(tick)}</text>`,
  );
  const box =
    curve.window === null
      ? NOTHING
      : html`<rect class="claim" x="${c(x(0))}" y="${c(y(curve.window[1]))}" width="${c(x(curve.claim ?? x.domain()[1]!) - x(0))}" height="${c(y(curve.window[0]) - y(curve.window[1]))}"/>`;
  const claimLine =
    curve.claim === null
      ? NOTHING
      : html`<path class="claimed" d="M${c(x(curve.claim))} ${MARGIN.top}V${c(bottom)}"/><text class="ax strong" x="${c(x(curve.claim) - AFTER)}" y="${MARGIN.top - DESCENT * 2}" text-anchor="${x(curve.claim) > size.width / 2 ? 'end' : 'start'}">claimed ${amountText({ value: curve.claim, unit: 'A', u: null })}</text>`;
  const ordered = [...curve.points].sort((a, b) => a.i - b.i);
  const line = html`<path class="curve" d="${ordered.map(({ i, v }, index) => `${index === 0 ? 'M' : 'L'}${c(x(i))} ${c(y(v))}`).join('')}"/>`;
  const dots = ordered.map(({ i, v, U }) => {
    const whisker = U === null || U === 0 ? NOTHING : html`<path class="spread" d="M${c(x(i))} ${c(y(v + U))}V${c(y(v - U))}"/>`;
    return html`${whisker}<circle class="point" cx="${c(x(i))}" cy="${c(y(v))}" r="${POINT}"/>`;
  });
  const startsElsewhere = y.domain()[0] === 0 ? '' : `, from ${yText(y.domain()[0]!)}`;
  const END_OF_TITLE = 34;
  return html`${box}${joined(grid)}<path class="axis" d="M${MARGIN.left} ${c(bottom)}H${c(right)}"/>${joined(feet)}
<text class="ax strong" x="2" y="${MARGIN.top - DESCENT * 2}">V${startsElsewhere}</text><text class="ax strong" x="${c(right)}" y="${c(bottom + END_OF_TITLE)}" text-anchor="end">A${x.domain()[0] === 0 ? '' : `, from ${xText(x.domain()[0]!)}`}</text>
${claimLine}${line}${joined(dots)}${drawCrossing(curve, held, finding, { x, y, bottom, right })}`;
}

interface Frame {
  readonly x: (current: number) => number;
  readonly y: (voltage: number) => number;
  readonly bottom: number;
  readonly right: number;
}

/** The current at which the window is left, pointed at with its number. */
function drawCrossing(curve: Curve, held: Held | null, finding: Finding | null, { x, y, bottom, right }: Frame): Markup {
  if (held === null) return NOTHING;
  const outcome = finding?.outcome ?? 'notAssessed';
  const voltage = findVoltage(curve, held.current);
  const at = x(held.current);
  const CLEAR = 8;
  const left = at > right / 2; // the label stands where there is room
  const word = finding === null ? '' : `, ${outcomeText(finding)}`;
  const mark = voltage === null ? NOTHING : drawMark(outcome, at, y(voltage), CROSSING_MARK);
  return html`<path class="crossing ${outcomeClass(outcome)}" d="M${c(at)} ${c(voltage === null ? bottom - CLEAR : y(voltage))}V${c(bottom)}"/>${mark}<text class="says strong" x="${c(left ? at - CLEAR : at + CLEAR)}" y="${c(bottom - CLEAR)}" text-anchor="${left ? 'end' : 'start'}">held ${held.text}${word}</text>`;
}

/** Voltage of the drawn line at a current; null outside the points. */
function findVoltage(curve: Curve, current: number): number | null {
  const ordered = [...curve.points].sort((a, b) => a.i - b.i);
  const above = ordered.findIndex(({ i }) => i >= current);
  const high = ordered[above];
  const low = ordered[above - 1] ?? high;
  if (high === undefined || low === undefined) return null;
  return high.i === low.i ? high.v : low.v + ((high.v - low.v) * (current - low.i)) / (high.i - low.i);
}

/** Ends of an axis: from zero when the data nearly reach it, else around the data; never below a floor that the values keep to. */
function reach(values: readonly number[], floor: number | null): [number, number] {
  const [least = 0, most = 1] = extent(values) as [number | undefined, number | undefined];
  const span = most - least || Math.abs(most) || 1;
  const low = least < span * FROM_ZERO ? Math.min(0, least) : least - span * HEADROOM;
  return [floor === null ? low : Math.max(floor, low), most + span * HEADROOM];
}
