import type { Assessment, Curve, Finding } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { SWEEP_ENDS } from '../words/case-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { type CurveFrame, type CurveSize, drawFrame, reach } from './curve-frame.ts';
import { type CurveNameAt, drawCurveNames } from './curve-name-labels.ts';
import { curveLabel, curveName } from './curve-names.ts';
import { drawLine, drawPoint } from './curve-points.ts';
import { drawMark, outcomeClass } from './outcome-mark.ts';

export const LOAD_CURVE_WIDE: CurveSize = { width: 640, height: 300 };
export const LOAD_CURVE_NARROW: CurveSize = { width: 330, height: 260 };

const MARGIN = { left: 46, right: 14, top: 22, bottom: 40 };
const NAMES = { ...MARGIN, right: 58 }; // room for the names of several curves
const CROSSING_MARK = 11;
const AFTER = 5;
const DESCENT = 4;
const LINE = 14; // from one label to the next
const CLEAR = 8;

interface Held {
  readonly current: number;
  readonly text: string;
}

/**
 * Output voltage over output current as it was judged, with the claim as a grey box and the current at which the window is left. Several
 * sweeps of one port and level, at other mains or the other way, lie over each other, each named at its end.
 */
export function drawLoadCurve(of: Curve | readonly Curve[], assessment: Assessment, size: CurveSize): Markup {
  const curves = 'points' in of ? [of] : of;
  const [first] = curves;
  if (first === undefined) return NOTHING;
  const label = `Load curve of ${curveName(first, assessment)}: ${loadCurvesSentence(curves, assessment)}`;
  return html`<svg class="ml fig load" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="${label}">${drawInside(curves, assessment, size)}</svg>`;
}

/** What the figure says, with the number in it; of several sweeps those that were judged, and which others lie over them. */
export function loadCurvesSentence(curves: readonly Curve[], assessment: Assessment): string {
  const [only] = curves;
  if (only === undefined) return '';
  if (curves.length === 1) return loadCurveSentence(only, assessment);
  const judged = curves.filter((curve) => findHeld(curve, assessment) !== null);
  const rest = curves.filter((curve) => !judged.includes(curve)).map((curve) => curveLabel(curve, curves));
  const said = judged.map((curve) => `at ${curveLabel(curve, curves)} ${loadCurveSentence(curve, assessment)}`);
  return [...said, ...(rest.length === 0 ? [] : [`${said.length === 0 ? 'Sweeps' : 'Laid over it: sweeps'} at ${rest.join(', ')}.`])].join(
    ' ',
  );
}

export function loadCurveSentence(curve: Curve, assessment: Assessment): string {
  const held = findHeld(curve, assessment);
  const claim = curve.claim === null ? '' : ` of ${amountText({ value: curve.claim, unit: 'A', u: null })} claimed`;
  const window = curve.window === null ? '' : ` inside ${volts(curve.window[0])} to ${volts(curve.window[1])}`;
  const ends = curve.ends === null ? '' : `; ${sentenceFor(SWEEP_ENDS, curve.ends)}`;
  if (held === null)
    return curve.points.length === 0 ? 'no point of this sweep could be used.' : `how much it holds${window} could not be told${ends}.`;
  return `held ${held.text}${claim}${window}${ends}.`;
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

function drawInside(curves: readonly Curve[], assessment: Assessment, size: CurveSize): Markup {
  const points = curves.flatMap((curve) => curve.points);
  if (points.length === 0) return html`<text x="${MARGIN.left}" y="${MARGIN.top}">no points</text>`;
  const held = curves.map((curve) => findHeld(curve, assessment));
  const claims = curves.flatMap(({ claim }) => claim ?? []);
  const currents = [0, ...points.map(({ i }) => i), ...claims, ...held.flatMap((one) => one?.current ?? [])];
  const voltages = points.flatMap(({ v, U }) => [v - (U ?? 0), v + (U ?? 0)]).concat(curves.flatMap(({ window }) => window ?? []));
  const floor = points.every(({ v }) => v >= 0) ? 0 : null;
  const frame = drawFrame(
    { x: reach(currents, 0), y: reach(voltages, floor), xUnit: 'A', yUnit: 'V' },
    size,
    curves.length === 1 ? MARGIN : NAMES,
  );
  const crossings = curves.map((curve, index) => {
    const lead = curves.length === 1 ? '' : `${curveLabel(curve, curves)}: `;
    const row = held.slice(index + 1).filter((one) => one !== null).length;
    return drawCrossing(curve, held[index] ?? null, findJudged(curve, assessment), { frame, lead, row });
  });
  const lines = curves.map((curve, index) => drawReadings(curve, index, frame));
  return html`${drawClaim(curves[0]!, frame)}${frame.drawn}
${drawClaimed(curves[0]!, frame, size)}${joined(lines)}${curves.length === 1 ? NOTHING : drawCurveNames(namesAt(curves, frame), frame, size.width)}${joined(crossings)}`;
}

function drawClaim({ window, claim }: Curve, { x, y }: CurveFrame): Markup {
  if (window === null) return NOTHING;
  const width = x(claim ?? x.domain()[1]!) - x(0);
  return html`<rect class="claim" x="${c(x(0))}" y="${c(y(window[1]))}" width="${c(width)}" height="${c(y(window[0]) - y(window[1]))}"/>`;
}

function drawClaimed({ claim }: Curve, { x, bottom }: CurveFrame, size: CurveSize): Markup {
  if (claim === null) return NOTHING;
  const text = `claimed ${amountText({ value: claim, unit: 'A', u: null })}`;
  return html`<path class="claimed" d="M${c(x(claim))} ${MARGIN.top}V${c(bottom)}"/><text class="ax strong" x="${c(x(claim) - AFTER)}" y="${MARGIN.top - DESCENT * 2}" text-anchor="${x(claim) > size.width / 2 ? 'end' : 'start'}">${text}</text>`;
}

function drawReadings(curve: Curve, shape: number, { x, y }: CurveFrame): Markup {
  const ordered = [...curve.points].sort((a, b) => a.i - b.i);
  const dots = ordered.map(({ i, v, U }) => {
    const whisker = U === null || U === 0 ? NOTHING : html`<path class="spread" d="M${c(x(i))} ${c(y(v + U))}V${c(y(v - U))}"/>`;
    return html`${whisker}${drawPoint(x(i), y(v), shape)}`;
  });
  return html`${drawLine(ordered.map(({ i, v }) => [x(i), y(v)] as const))}${joined(dots)}`;
}

function namesAt(curves: readonly Curve[], { x, y }: CurveFrame): readonly CurveNameAt[] {
  return curves.flatMap((curve) => {
    const last = [...curve.points].sort((a, b) => a.i - b.i).at(-1);
    return last === undefined ? [] : [{ text: curveLabel(curve, curves), x: x(last.i), y: y(last.v) }];
  });
}

interface CrossingPlace {
  readonly frame: CurveFrame;
  /** Names the curve when there are several. */
  readonly lead: string;
  /** Rows of labels below this one. */
  readonly row: number;
}

/** The current at which the window is left, pointed at with its number. */
function drawCrossing(curve: Curve, held: Held | null, finding: Finding | null, { frame, lead, row }: CrossingPlace): Markup {
  if (held === null) return NOTHING;
  const { x, y, bottom, right } = frame;
  const outcome = finding?.outcome ?? 'notAssessed';
  const voltage = findVoltage(curve, held.current);
  const at = x(held.current);
  const left = at > right / 2; // the label stands where there is room
  const word = finding === null ? '' : `, ${outcomeText(finding)}`;
  const mark = voltage === null ? NOTHING : drawMark(outcome, at, y(voltage), CROSSING_MARK);
  return html`<path class="crossing ${outcomeClass(outcome)}" d="M${c(at)} ${c(voltage === null ? bottom - CLEAR : y(voltage))}V${c(bottom)}"/>${mark}<text class="says strong" x="${c(left ? at - CLEAR : at + CLEAR)}" y="${c(bottom - CLEAR - row * LINE)}" text-anchor="${left ? 'end' : 'start'}">${lead}held ${held.text}${word}</text>`;
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
