import type { RunWaveform } from '../../core/evidence/computed/circuit-run.ts';
import type { FaultCampaign, FaultOutcome } from '../../core/evidence/computed/fault-campaign.ts';
import type { OperatingPoint, Simulation } from '../../core/evidence/computed/simulation.ts';
import { drawRunLine, lineTitle, WAVEFORM_NARROW, WAVEFORM_WIDE } from '../figure/run-waveform.ts';
import type { MeasuredPoint } from '../text/run-text.ts';
import {
  assumptionTexts,
  ENDS,
  faultText,
  LOAD_WORDS,
  loadText,
  MORE_TO_EARTH,
  NOT_SETTLED,
  runAmount,
  runFindingText,
  SIMULATED,
  STATE_SIGNS,
  STATE_WORDS,
  UNBALANCED,
} from '../words/run-words.ts';

/** Everything that the page of runs shows, in words and finished drawings. */
export interface RunView {
  readonly levels: readonly { readonly id: string; readonly name: string }[];
  /** What has to be known before the circuit can be run, one sentence each. */
  readonly needs: readonly string[];
  readonly stale: readonly string[];
  readonly said: string;
  readonly simulations: readonly SimulationView[];
  readonly campaigns: readonly CampaignView[];
}
export interface SimulationView {
  readonly level: string;
  readonly title: string;
  readonly points: readonly PointView[];
  readonly assumptions: readonly string[];
  readonly leftOut: string;
}
export interface PointView {
  readonly id: string;
  readonly at: string;
  readonly outputText: string;
  readonly inputText: string;
  readonly measuredText: string;
  readonly differenceText: string;
  readonly remarks: string;
  readonly stresses: readonly {
    readonly part: string;
    readonly valueText: string;
    readonly limitText: string;
    readonly shareText: string;
    readonly beyond: boolean;
  }[];
  readonly losses: string;
}
/** How much a cell of the grid asks for attention: nothing changed, the output did, something is or may be beyond. */
export type Tone = 'same' | 'changed' | 'beyond' | 'open';
export interface CellView {
  readonly load: string;
  readonly sign: string;
  readonly word: string;
  readonly tone: Tone;
  readonly output: string;
  readonly person: string;
  readonly fuse: string;
  readonly fire: string;
}
export interface CampaignView {
  readonly level: string;
  readonly title: string;
  readonly loads: readonly string[];
  readonly rows: readonly { readonly fault: string; readonly name: string; readonly cells: readonly CellView[]; readonly same: boolean }[];
  readonly summary: readonly string[];
  readonly assumptions: readonly string[];
  readonly leftOut: string;
}
export interface LinesView {
  readonly title: string;
  readonly figures: readonly { readonly title: string; readonly wideSvg: string; readonly narrowSvg: string }[];
}

const LOADS = ['none', 'standby', 'full'] as const;
const PERCENT = 100;

export function toSimulationView(result: Simulation, measured: readonly MeasuredPoint[]): SimulationView {
  return {
    level: result.level.id,
    title: result.level.name,
    points: result.points.map((point) =>
      toPointView(
        point,
        measured.find(({ id }) => id === point.id),
      ),
    ),
    assumptions: assumptionTexts(result.assumptions),
    leftOut: result.leftOut.join(', '),
  };
}

function toPointView(point: OperatingPoint, measured: MeasuredPoint | undefined): PointView {
  const { mains, output, inputW, outcome, settled, balanced } = point;
  const remarks = [
    ENDS[outcome],
    settled ? '' : NOT_SETTLED,
    balanced ? '' : UNBALANCED,
    ...point.findings.map((finding) => runFindingText(finding, false)),
  ];
  return {
    id: point.id,
    at: `${runAmount(mains.rmsV, 'V')} ${runAmount(mains.hertz, 'Hz')}, ${loadText(point.load)}`,
    outputText: output === null ? 'none' : runAmount(output.mean, 'V'),
    inputText: runAmount(inputW, 'W'),
    measuredText:
      measured === undefined
        ? ''
        : [runAmount(measured.outputV, 'V'), measured.inputW === null ? '' : runAmount(measured.inputW, 'W')]
            .filter((one) => one !== '')
            .join(', '),
    differenceText:
      measured === undefined || output === null
        ? ''
        : [signed(output.mean - measured.outputV, 'V'), measured.inputW === null ? '' : signed(inputW - measured.inputW, 'W')]
            .filter((one) => one !== '')
            .join(', '),
    remarks: remarks.filter((one) => one !== '').join('; '),
    stresses: point.stresses.map(({ part, unit, value, limit }) => ({
      part,
      valueText: runAmount(value, unit),
      limitText: limit === null ? 'not known' : runAmount(limit, unit),
      shareText: limit === null ? '' : `${Math.round((PERCENT * value) / limit)} %`,
      beyond: limit !== null && value > limit,
    })),
    losses: point.losses
      .slice(0, 4)
      .map(({ part, watts }) => `${part} ${runAmount(watts, 'W')}`)
      .join(', '),
  };
}

const signed = (value: number, unit: string): string => `${value < 0 ? '\u2212' : '+'}${runAmount(Math.abs(value), unit)}`;

export function toCampaignView(result: FaultCampaign): CampaignView {
  const rows = result.faults.map((fault) => {
    const cells = LOADS.flatMap((load) =>
      result.results.filter((one) => one.fault === fault.id && one.load === load).map((one) => toCell(one, result)),
    );
    return { fault: fault.id, name: faultText(fault), cells, same: cells.every(({ tone }) => tone === 'same') };
  });
  const same = rows.filter((row) => row.same).length;
  return {
    level: result.level.id,
    title: `${result.level.name}, ${runAmount(result.mains.rmsV, 'V')} mains`,
    loads: LOADS.map((load) => LOAD_WORDS[load]),
    rows,
    summary: [
      `${same} of ${rows.length} faults change nothing at any load.`,
      ...(result.tolerated.length === 0 ? [] : [`Beyond a rating without any fault: ${result.tolerated.join(', ')}.`]),
      ...(result.fuses.length === 0 ? ['Nothing in the traced circuit opens.'] : []),
      ...(result.acrossBarrier.length === 0
        ? []
        : [`Not run, since they bridge the barrier: ${result.acrossBarrier.map(faultText).join(', ')}.`]),
      ...(result.certified.length === 0
        ? []
        : [`Not run, since the part is established to be made for its place: ${result.certified.map(faultText).join(', ')}.`]),
    ],
    assumptions: assumptionTexts(result.assumptions),
    leftOut: result.leftOut.join(', '),
  };
}

const BEYOND_STATES: readonly FaultOutcome['state'][] = ['runaway', 'ratingExceeded'];
const OPEN_STATES: readonly FaultOutcome['state'][] = ['stillMoving', 'noResult'];

/** Touch current is said to be more from this many times that of the healthy circuit on. House choice; what it means is judged elsewhere. */
const MUCH_MORE = 3;

function toCell(one: FaultOutcome, { level, fuses, healthy }: FaultCampaign): CellView {
  const { state, settled, outputMostV, findings, balanced } = one;
  const opened = findings.filter(({ code }) => code === 'fuseOpened').map(({ ref }) => ref);
  const beyond = findings.filter(({ code }) => code === 'ratingExceeded' || code === 'breakdown');
  const before = healthy.find(({ load }) => load === one.load)?.touchRmsA ?? null;
  const live = one.touchRmsA !== null && before !== null && one.touchRmsA > MUCH_MORE * before;
  const tone: Tone =
    live || BEYOND_STATES.includes(state) || beyond.length > 0
      ? 'beyond'
      : OPEN_STATES.includes(state) || !balanced
        ? 'open'
        : state === 'regulates' && opened.length === 0
          ? 'same'
          : 'changed';
  const ends =
    settled === null
      ? outputMostV === null
        ? 'not known'
        : `up to ${runAmount(outputMostV, 'V')} so far`
      : runAmount(settled.outputV, 'V');
  return {
    load: one.load,
    sign: STATE_SIGNS[state],
    word: `${balanced ? STATE_WORDS[state] : UNBALANCED}${live ? `, ${MORE_TO_EARTH}` : ''}`,
    tone,
    output: `${ends} of ${runAmount(level.volts, 'V')}${one.aboveHarmS > 0 ? `, too high for ${runAmount(one.aboveHarmS, 's')}` : ''}`,
    person: one.touchRmsA === null ? 'not known' : `${runAmount(one.touchRmsA, 'A')} to earth`,
    fuse: opened.length > 0 ? `${opened.join(', ')} opens` : fuses.length === 0 ? 'there is none' : 'holds',
    fire: [
      ...beyond.map((finding) => runFindingText(finding, true)),
      ...one.hotter.map(({ part, watts, healthyW }) => `${part} ${runAmount(watts, 'W')} instead of ${runAmount(healthyW, 'W')}`),
    ].join('; '),
  };
}

/** Lines of a run as figures, each with its name. */
export function toLinesView(title: string, waveforms: readonly { readonly name: string; readonly lines: RunWaveform | null }[]): LinesView {
  return {
    title,
    figures: waveforms.flatMap(({ name, lines }) =>
      (lines?.lines ?? []).map(({ id }) => ({
        title: name === '' ? lineTitle(id) : `${lineTitle(id)}, ${name}`,
        wideSvg: drawRunLine(lines!, id, WAVEFORM_WIDE).markup,
        narrowSvg: drawRunLine(lines!, id, WAVEFORM_NARROW).markup,
      })),
    ),
  };
}

export const RUN_SAID = SIMULATED;
