import type { Assessment, Curve, Finding } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { findingValue } from '../words/finding-text.ts';
import { GRADE_STROKES, GRADE_WORDS } from '../words/grade-words.ts';
import { namedLimitText } from '../words/limit-words.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { type CurveFrame, type CurveSize, drawFrame, reach } from './curve-frame.ts';
import { type CurveNameAt, drawCurveNames } from './curve-name-labels.ts';
import { curveLabel, curveName, findingOn } from './curve-names.ts';
import { drawLine, drawPoint } from './curve-points.ts';
import { cutBelow } from './cut-below.ts';
import { drawMark, outcomeClass } from './outcome-mark.ts';
import { spreadLabels } from './spread-labels.ts';

export const EFFICIENCY_WIDE: CurveSize = { width: 640, height: 250 };
export const EFFICIENCY_NARROW: CurveSize = { width: 330, height: 250 };

const CHECK = 'delivery/efficiency';
const NARROW = 400;
const WIDE_MARGIN = { left: 46, right: 176, top: 24, bottom: 40 };
const NARROW_MARGIN = { left: 46, right: 14, top: 60, bottom: 40 };
const NAMES = 1.2; // times the range, so that the names of several curves stand behind their ends
const PERCENT = 100;
const MARK = 11;
const RING = 5.5;
const DESCENT = 4;
const LINE = 15;
const LABELS_APART = 34; // two lines and a gap
const AFTER = 9;

interface LoadPoint {
  readonly i: number;
  readonly efficiency: number;
}

/** Output over input power at every point of a sweep that has both. */
export function efficiencyPoints({ points }: Pick<Curve, 'points'>): readonly LoadPoint[] {
  return points
    .flatMap(({ i, v, pin }) => (pin === null || pin <= 0 || i <= 0 ? [] : [{ i, efficiency: (v * i) / pin }]))
    .sort((a, b) => a.i - b.i);
}

/** The loads that are averaged, from the steps of the finding: its symbols end in the percent of the claimed current. */
export function averagedPoints(
  finding: Finding | undefined,
  claim: number | null,
  { steps }: Pick<Assessment, 'steps'>,
): readonly LoadPoint[] {
  const average = steps.find(({ id }) => id === finding?.step);
  if (average === undefined || claim === null) return [];
  return average.uses.flatMap(({ step: id, symbol }) => {
    const share = /_\{?(\d+)\}?$/.exec(symbol)?.[1];
    const value = steps.find((step) => step.id === id)?.value;
    return share === undefined || value === undefined || value === null
      ? []
      : [{ i: (Number(share) / PERCENT) * claim, efficiency: value }];
  });
}

/** Efficiency over current with the loads that are averaged, their average, and the least average as a line. */
export function drawEfficiencyCurve(curves: readonly Curve[], assessment: Assessment, size: CurveSize): Markup {
  const told = curves.filter((curve) => efficiencyPoints(curve).length > 0);
  const [first] = told;
  if (first === undefined) return NOTHING;
  const finding = findingOn(first, CHECK, assessment);
  const averaged = averagedPoints(finding, first.claim, assessment);
  const margin = size.width < NARROW ? NARROW_MARGIN : WIDE_MARGIN;
  const all = told.flatMap((curve) => efficiencyPoints(curve)).concat(averaged);
  // lighter loads than any that is averaged would press everything else together: the axis leaves them out, and the caption says so
  const lightest = Math.min(...averaged.map(({ i }) => i)); // infinite when none is averaged
  const judged = averaged.length === 0 ? all : all.filter(({ i }) => i >= lightest);
  const levels = [finding?.measured, finding?.limit?.at].flatMap((one) =>
    one !== undefined && one !== null && 'value' in one ? [one.value] : [],
  );
  const yText = (value: number): string => `${Number((value * PERCENT).toFixed(1))}`;
  const [low, high] = reach([...judged.map(({ efficiency }) => efficiency), ...levels], 0);
  const [from, most] = reach([0, ...all.map(({ i }) => i)], 0);
  const x: [number, number] = [from, told.length === 1 ? most : most * NAMES];
  const frame = drawFrame({ x, y: [low, Math.min(1, high)], xUnit: 'A', yUnit: '%', yText }, size, margin);
  const lines = told.map((curve, index) => drawReadings(curve, index, frame));
  const rings = averaged.map(
    ({ i, efficiency }) => html`<circle class="ring" cx="${c(frame.x(i))}" cy="${c(frame.y(efficiency))}" r="${RING}"/>`,
  );
  const label = `Efficiency of ${curveName(first, assessment)} over current: ${efficiencySentence(curves, assessment)}`;
  return html`<svg class="ml fig load" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="${label}">${frame.drawn}${drawLeast(finding, frame, margin.left)}${joined(lines)}${joined(rings)}${told.length === 1 ? NOTHING : drawCurveNames(namesAt(told, frame), frame, frame.right - MARK)}${finding === undefined ? NOTHING : drawAverage(finding, frame, size)}</svg>`;
}

/** What the figure says, with the numbers in it. */
export function efficiencySentence(curves: readonly Curve[], assessment: Assessment): string {
  const finding = curves[0] === undefined ? undefined : findingOn(curves[0], CHECK, assessment);
  if (finding === undefined || finding.measured === null) return 'the average of the four loads was not worked out.';
  const least = finding.limit === null ? '' : `; asked for: ${namedLimitText(finding.limit, finding.show)}`;
  return `the average of the four loads is ${findingValue(finding)}${least}; ${outcomeText(finding)}.`;
}

function drawReadings(curve: Curve, shape: number, { x, y }: CurveFrame): Markup {
  const points = efficiencyPoints(curve);
  const [floor = 0] = y.domain();
  const pieces = cutBelow(
    points.map(({ i, efficiency }) => [i, efficiency]),
    floor,
  );
  const dots = points.filter(({ efficiency }) => efficiency >= floor);
  return html`${joined(pieces.map((piece) => drawLine(piece.map(([i, efficiency]) => [x(i), y(efficiency)] as const))))}${joined(dots.map(({ i, efficiency }) => drawPoint(x(i), y(efficiency), shape)))}`;
}

function namesAt(curves: readonly Curve[], { x, y }: CurveFrame): readonly CurveNameAt[] {
  return curves.flatMap((curve) => {
    const last = efficiencyPoints(curve).at(-1);
    return last === undefined ? [] : [{ text: curveLabel(curve, curves), x: x(last.i), y: y(last.efficiency) }];
  });
}

function drawLeast(finding: Finding | undefined, { y, right }: CurveFrame, left: number): Markup {
  const at = finding?.limit?.at;
  if (finding === undefined || finding.limit === null || at === undefined) return NOTHING;
  return html`<path class="limit ${GRADE_STROKES[finding.limit.grade]}" d="M${left} ${c(y(at.value))}H${c(right)}"/>`;
}

/** The average stands at the right edge, beside the line it is held against. */
function drawAverage(finding: Finding, frame: CurveFrame, size: CurveSize): Markup {
  const { measured, limit } = finding;
  const value = measured !== null && 'value' in measured ? measured.value : null;
  const at = limit?.at?.value ?? null;
  const word = outcomeClass(finding.outcome);
  const found = [`average ${findingValue(finding)}`, outcomeText(finding)];
  const asked = limit === null ? [] : [namedLimitText(limit, finding.show), GRADE_WORDS[limit.grade]];
  const mark = value === null ? NOTHING : drawMark(finding.outcome, frame.right, frame.y(value), MARK);
  if (size.width < NARROW) {
    const [one, two] = [LINE + DESCENT, LINE * 2 + DESCENT];
    const told =
      value === null ? NOTHING : html`<text class="word ${word}" x="${size.width}" y="${one}" text-anchor="end">${found.join(', ')}</text>`;
    const line =
      at === null ? NOTHING : html`<text class="ax" x="${size.width}" y="${two}" text-anchor="end">line: ${asked.join(', ')}</text>`;
    return html`${mark}${told}${line}`;
  }
  const heights = spreadLabels(
    [value, at].map((one) => (one === null ? 0 : frame.y(one))),
    LABELS_APART,
    frame.bottom - LINE,
  );
  const x = frame.right + AFTER;
  const [foundAt = 0, askedAt = 0] = heights;
  const told =
    value === null
      ? NOTHING
      : html`<text class="strong" x="${c(x)}" y="${c(foundAt + DESCENT)}">${found[0]}</text><text class="word ${word}" x="${c(x)}" y="${c(foundAt + DESCENT + LINE)}">${found[1]}</text>`;
  const line =
    at === null
      ? NOTHING
      : html`<text class="ax" x="${c(x)}" y="${c(askedAt + DESCENT)}">${asked[0]}</text><text class="ax" x="${c(x)}" y="${c(askedAt + DESCENT + LINE)}">${asked[1]}</text>`;
  return html`${mark}${told}${line}`;
}
