import type { Amount, Assessment, Finding } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import type { CurveSize } from './curve-frame.ts';
import { outcomeClass } from './outcome-mark.ts';

const HOUR_S = 3600;
const YEAR_H = 8766;
const FROM_H = 300;
const TO_H = 15 * YEAR_H; // beyond it no maker answers for a calculation
const MARKS_H = [1000, YEAR_H, 2 * YEAR_H, 5 * YEAR_H, TO_H] as const;
const ROW = 46;
const TOP = 12;
const UNDER = 30;
const LEFT = 6;
const RIGHT = 40;
const BAND = 2; // standard uncertainties either way
const R = 5;
const NAME_ABOVE = 14;

/** Expected lives of electrolytic capacitors, shortest first. */
export function lifeFindings({ findings }: Pick<Assessment, 'findings'>): readonly (Finding & { measured: Amount })[] {
  return findings
    .filter(
      (finding): finding is Finding & { measured: Amount } =>
        finding.check === 'endurance/capacitor-life' && finding.measured !== null && 'value' in finding.measured,
    )
    .toSorted((a, b) => a.measured.value - b.measured.value);
}

/** Life from new on a logarithmic axis: the room of the reading filled, the highest ambient hollow, the least life as a line. */
export function drawLifeChart(assessment: Pick<Assessment, 'findings'>, { width }: Pick<CurveSize, 'width'>): Markup {
  const rows = lifeFindings(assessment);
  if (rows.length === 0) return NOTHING;
  const height = TOP + rows.length * ROW + UNDER;
  const bottom = height - UNDER;
  const x = (hours: number): number => {
    const share = Math.log(Math.min(TO_H, Math.max(FROM_H, hours)) / FROM_H) / Math.log(TO_H / FROM_H);
    return LEFT + share * (width - LEFT - RIGHT);
  };
  const spoken = rows.map(({ about, measured }) => `${about ?? ''} ${amountText(measured, 'hours')}`).join('; ');
  const grid = MARKS_H.map(
    (hours) =>
      html`<path class="grid" d="M${c(x(hours))} ${TOP}V${bottom}"/><text class="ax" x="${c(x(hours))}" y="${bottom + NAME_ABOVE}" text-anchor="middle">${hours < YEAR_H ? `${hours} h` : `${hours / YEAR_H} a`}</text>`,
  );
  return html`<svg class="ml fig load life" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-label="Expected life from new: ${spoken}">${joined(grid)}${joined(rows.map((row, index) => drawRow(row, TOP + index * ROW, x)))}</svg>`;
}

function drawRow(finding: Finding & { measured: Amount }, top: number, x: (hours: number) => number): Markup {
  const { measured, limit, outcome, notes, about } = finding;
  const hours = measured.value / HOUR_S;
  const spread = measured.u === null ? 0 : (BAND * measured.u) / HOUR_S;
  const middle = top + ROW / 2 + R;
  const highest = notes.find(({ key }) => key === 'lifeAtHighest')?.args['hours'];
  const kind = outcomeClass(outcome);
  const least = limit?.at?.value;
  return html`<text class="name" x="${LEFT}" y="${c(top + NAME_ABOVE)}">${about ?? ''}: ${amountText(measured, 'hours')}</text>${
    least === undefined
      ? NOTHING
      : html`<path class="limit ${limit?.grade ?? ''}" d="M${c(x(least / HOUR_S))} ${c(middle - 2 * R)}v${4 * R}"/>`
  }<rect class="whisker ${kind}" x="${c(x(hours - spread))}" y="${c(middle - R)}" width="${c(Math.max(1, x(hours + spread) - x(hours - spread)))}" height="${2 * R}"/><circle class="${kind} full" cx="${c(x(hours))}" cy="${c(middle)}" r="${R}"/>${
    typeof highest === 'number' ? html`<circle class="${kind} open" cx="${c(x(highest))}" cy="${c(middle)}" r="${R}"/>` : NOTHING
  }`;
}
