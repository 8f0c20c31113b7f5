import type { FaultCampaign } from '../../core/evidence/computed/fault-campaign.ts';
import type { Simulation } from '../../core/evidence/computed/simulation.ts';
import { drawRunLine, WAVEFORM_NARROW, WAVEFORM_WIDE } from '../figure/run-waveform.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import type { MeasuredPoint } from '../text/run-text.ts';
import { RUN_PAGE } from '../words/run-page-words.ts';
import { faultText, LOAD_WORDS } from '../words/run-words.ts';
import { RUN_SAID, toCampaignView, toSimulationView } from '../workspace/run-view.ts';
import type { FigurePart } from './figure-part.ts';

/** Kept runs of the traced circuit, as a report shows them. */
export interface ReportRuns {
  readonly simulations: readonly { readonly result: Simulation; readonly measured: readonly MeasuredPoint[] }[];
  readonly campaigns: readonly FaultCampaign[];
}

/** Operating points beside what was measured, the faults that change something, and what all of it stands on. */
export function setRuns(runs: ReportRuns | undefined): Markup {
  if (runs === undefined) return NOTHING;
  return html`<p>${RUN_SAID}</p>
${joined(runs.simulations.map(({ result, measured }) => setPoints(result, measured)))}${joined(runs.campaigns.map(setFaults))}`;
}

function setPoints(result: Simulation, measured: readonly MeasuredPoint[]): Markup {
  const view = toSimulationView(result, measured);
  const head = RUN_PAGE.pointColumns.map((column) => html`<th scope="col">${column}</th>`);
  const rows = view.points.map(
    (one) =>
      html`<tr><th scope="row">${one.at}</th><td>${one.outputText}</td><td>${one.inputText}</td><td>${one.measuredText}</td><td>${one.differenceText}</td><td>${one.remarks}</td></tr>`,
  );
  return html`<table class="runs"><caption>${RUN_PAGE.operating}, ${view.title}</caption><thead><tr>${joined(head)}</tr></thead><tbody>${joined(rows)}</tbody></table>
${setAssumed(view.assumptions)}`;
}

function setFaults(result: FaultCampaign): Markup {
  const view = toCampaignView(result);
  const head = view.loads.map((load) => html`<th scope="col">${load}</th>`);
  const rows = view.rows
    .filter(({ same }) => !same)
    .map(
      (row) => html`<tr><th scope="row">${row.name}</th>${joined(row.cells.map((cell) => html`<td>${cell.sign} ${cell.word}</td>`))}</tr>`,
    );
  return html`<table class="runs"><caption>${RUN_PAGE.singleFaults}, ${view.title}</caption><thead><tr><th scope="col">${RUN_PAGE.fault}</th>${joined(head)}</tr></thead><tbody>${joined(rows)}</tbody></table>
<p class="small">${view.summary.join(' ')}</p>
${setAssumed(view.assumptions)}`;
}

function setAssumed(assumptions: readonly string[]): Markup {
  return html`<details><summary>${RUN_PAGE.assumed(assumptions.length)}</summary><ul class="small">${joined(assumptions.map((one) => html`<li>${one}</li>`))}</ul></details>
`;
}

const MOST = 2;

/** Output of the worst faults over time. */
export function runFigures(runs: ReportRuns | undefined): FigurePart[] {
  return (runs?.campaigns ?? []).flatMap(({ worst, faults, level }) =>
    worst.slice(0, MOST).flatMap(({ fault, load, waveform }) => {
      const own = faults.find(({ id }) => id === fault);
      const at = { at: level.volts, text: level.name };
      return own === undefined
        ? []
        : [
            {
              wide: drawRunLine(waveform, 'output', WAVEFORM_WIDE, at),
              narrow: drawRunLine(waveform, 'output', WAVEFORM_NARROW, at),
              title: `Output after a fault: ${faultText(own)}`,
              caption: `simulated at ${LOAD_WORDS[load]}, from the fault on; consistent with the traced parts, not measured.`,
            },
          ];
    }),
  );
}
