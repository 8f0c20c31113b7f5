import type { FaultCampaign, FaultOutcome } from '../../core/evidence/computed/fault-campaign.ts';
import type { OperatingPoint, Simulation } from '../../core/evidence/computed/simulation.ts';
import {
  assumptionTexts,
  ENDS,
  faultText,
  LOAD_WORDS,
  loadText,
  NOT_SETTLED,
  runAmount,
  runFindingText,
  SIMULATED,
  STATE_SIGNS,
  STATE_WORDS,
  UNBALANCED,
} from '../words/run-words.ts';
import { padTo, toTerminal } from './terminal-text.ts';

/** Operating points measured nearest to what was simulated, for the columns beside. */
export interface MeasuredPoint {
  readonly id: string;
  readonly outputV: number;
  readonly inputW: number | null;
}

/** Operating points, stresses and assumptions of a simulation, for a terminal. */
export function simulationText(result: Simulation, measured: readonly MeasuredPoint[]): string {
  const lines = [toTerminal(`${result.level.name}: ${SIMULATED}`), ''];
  for (const point of result.points) {
    lines.push(toTerminal(pointText(point)));
    const beside = measured.find(({ id }) => id === point.id);
    if (beside !== undefined && point.output !== null) lines.push(`    ${toTerminal(besideText(point, beside))}`);
    for (const { part, unit, value, limit } of point.stresses)
      lines.push(`    ${toTerminal(`${part} ${runAmount(value, unit)}${limit === null ? '' : ` of ${runAmount(limit, unit)}`}`)}`);
    if (point.losses.length > 0)
      lines.push(
        `    ${toTerminal(
          `lost in ${point.losses
            .slice(0, 4)
            .map(({ part, watts }) => `${part} ${runAmount(watts, 'W')}`)
            .join(', ')}`,
        )}`,
      );
    for (const finding of point.findings) lines.push(`    ${toTerminal(runFindingText(finding, false))}`);
  }
  return [...lines, '', ...tail(result)].join('\n');
}

function pointText(point: OperatingPoint): string {
  const { mains, output, inputW, settled, outcome, balanced } = point;
  const volts =
    output === null ? 'no output' : `${runAmount(output.mean, 'V')} (${runAmount(output.most - output.least, 'V')} from top to bottom)`;
  const remarks = [outcome === 'completed' ? '' : ENDS[outcome], settled ? '' : NOT_SETTLED, balanced ? '' : UNBALANCED].filter(
    (one) => one !== '',
  );
  return `${runAmount(mains.rmsV, 'V')} ${runAmount(mains.hertz, 'Hz')}, ${loadText(point.load)}: ${volts}, ${runAmount(inputW, 'W')} from the mains${remarks.length === 0 ? '' : `; ${remarks.join('; ')}`}`;
}

function besideText({ output, inputW }: OperatingPoint, measured: MeasuredPoint): string {
  const volts = output!.mean - measured.outputV;
  const watts = measured.inputW === null ? '' : `, ${runAmount(measured.inputW, 'W')} (simulated ${signed(inputW - measured.inputW, 'W')})`;
  return `measured ${runAmount(measured.outputV, 'V')} (simulated ${signed(volts, 'V')})${watts}`;
}

const signed = (value: number, unit: string): string => `${value < 0 ? '\u2212' : '+'}${runAmount(Math.abs(value), unit)}`;

/** Faults that change something, worst first by load, then how many go on as before; for a terminal. */
export function faultsText(result: FaultCampaign): string {
  const lines = [toTerminal(`${result.level.name} at ${runAmount(result.mains.rmsV, 'V')}: ${SIMULATED}`), ''];
  const width = Math.max(...result.faults.map((fault) => faultText(fault).length)) + 2;
  const loads = ['none', 'standby', 'full'] as const;
  const cellWidth = Math.max(...result.results.map((one) => cellText(one).length)) + 2;
  lines.push(`${padTo('', width)}${loads.map((load) => padTo(LOAD_WORDS[load], cellWidth)).join('')}`);
  let same = 0;
  for (const fault of result.faults) {
    const cells = loads.map((load) => result.results.find((one) => one.fault === fault.id && one.load === load));
    if (cells.every((cell) => cell?.state === 'regulates' && cell.findings.length === 0)) same += 1;
    else
      lines.push(
        `${padTo(toTerminal(faultText(fault)), width)}${cells
          .map((cell) => padTo(cell === undefined ? '' : cellText(cell), cellWidth))
          .join('')
          .trimEnd()}`,
      );
  }
  lines.push('', `${same} of ${result.faults.length} faults change nothing at any load.`);
  if (result.tolerated.length > 0) lines.push(`Beyond a rating without any fault: ${result.tolerated.join(', ')}.`);
  if (result.acrossBarrier.length > 0)
    lines.push(`Not run, since they bridge the barrier: ${result.acrossBarrier.map(faultText).join(', ')}.`);
  return [...lines, '', ...tail(result)].join('\n');
}

function cellText({ state, outputMostV, findings, settled }: FaultOutcome): string {
  const volts = state === 'runaway' || state === 'ratingExceeded' || state === 'stillMoving' ? outputMostV : (settled?.outputV ?? null);
  const opened = findings.find(({ code }) => code === 'fuseOpened');
  const beyond = findings.find(({ code }) => code === 'ratingExceeded' || code === 'breakdown');
  const more = [
    volts === null ? '' : runAmount(volts, 'V'),
    opened === undefined ? '' : `${opened.ref} opens`,
    beyond === undefined ? '' : beyond.ref,
  ].filter((one) => one !== '');
  return toTerminal(`${STATE_SIGNS[state]} ${STATE_WORDS[state]}${more.length === 0 ? '' : ` (${more.join(', ')})`}`);
}

function tail({ assumptions, leftOut }: Pick<Simulation, 'assumptions' | 'leftOut'>): string[] {
  return [
    'Assumed:',
    ...assumptionTexts(assumptions).map((one) => `  ${toTerminal(one)}`),
    ...(leftOut.length === 0 ? [] : [toTerminal(`Left out of the run: ${leftOut.join(', ')}.`)]),
  ];
}
