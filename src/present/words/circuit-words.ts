import type { JobKey } from '../../core/circuit/recognise/job.ts';
import type { CircuitResult } from '../../core/result/assessment.ts';
import type { PartMark } from '../schematic/part-mark.ts';
import { amountText } from './amount-text.ts';

/** What a part is there for; the reason follows from the nets and parts named beside it. */
export const JOB_WORDS: Readonly<Record<JobKey, string>> = {
  inlet: 'brings the mains in',
  outlet: 'hands the output out',
  fuse: 'opens when the mains side fails',
  inrushLimiter: 'limits the current when it is plugged in',
  surgeLimiter: 'takes surges between the rails',
  acrossMains: 'shorts interference between the poles of the mains',
  mainsBleeder: 'empties the capacitor it stands across after unplugging',
  commonModeChoke: 'keeps interference of both poles together off the mains',
  mainsFilter: 'keeps interference off the mains',
  droppingCapacitor: 'drops the mains by its reactance: no isolation',
  mainsRectifier: 'rectifies the mains',
  bulk: 'stores the rectified mains',
  bulkBleeder: 'empties the bulk capacitor',
  bulkFilter: 'smooths between two bulk capacitors',
  bulkDecoupling: 'shorts fast currents across the bulk rail',
  transformer: 'carries the power to the other side',
  switch: 'switches the primary winding',
  controllerWithSwitch: 'controls, with the switch inside',
  controller: 'controls the switch',
  switchSense: 'shows the current of the switch as a voltage',
  senseResistor: 'hands the voltage of the current sense on',
  driveResistor: 'leads to the control pin of the switch',
  drivePath: 'feeds the swing of a winding back to the switch, which keeps it oscillating',
  limitTransistor: 'takes the drive away from the switch',
  startResistor: 'starts the unit from the bulk rail',
  clampDiode: 'leads the spike of the switch node away',
  clampStore: 'takes up and burns the spike of the switch node',
  clampZener: 'limits the spike of the switch node',
  snubber: 'damps ringing across what it spans',
  auxiliaryRectifier: 'rectifies the auxiliary winding',
  auxiliaryResistor: 'stands between auxiliary rectifier and rail',
  auxiliaryStore: 'stores the auxiliary rail; dried out, it lets the output rise',
  freewheel: 'carries the current while the switch is open',
  outputChoke: 'hands the switched voltage to the output',
  outputRectifier: 'rectifies the output',
  outputStore: 'stores the output',
  outputFilter: 'smooths the output further',
  outputBleeder: 'loads the output a little, so that it holds still with nothing connected',
  outputSwitch: 'joins the output to the socket',
  lamp: 'shows that it is on',
  lampResistor: 'limits the current of the lamp',
  optocoupler: 'carries the feedback over the barrier',
  reference: 'compares the output with its own reference',
  dividerUpper: 'upper part of the divider that sets the output',
  dividerLower: 'lower part of the divider that sets the output',
  voltageLeg: 'raises the output when the chip joins it in',
  ledResistor: 'limits the current of the feedback LED',
  ledBypass: 'keeps the reference supplied past the LED',
  compensation: 'steadies the control loop',
  regulatingZener: 'sets the output by its voltage',
  negotiation: 'agrees on the voltage with the connected device',
  barrierCapacitor: 'leads interference over the barrier back to the mains side',
  barrierResistor: 'bleeds charge over the barrier',
  signalDecoupling: 'steadies a signal or supply pin',
  link: 'joins two tracks',
  heatSink: 'carries heat away',
  load: 'loads the output',
};
export const NOT_RECOGNISED = 'not recognised';
/** A pin whose track nobody could follow. */
export const NOT_FOLLOWED = 'not followed';

const CONVERTERS: Readonly<Record<string, string>> = {
  flyback: 'a flyback converter',
  forward: 'a forward converter',
  buck: 'a step-down converter without a transformer',
  capacitiveDropper: 'a capacitor in series with the mains',
  mainsTransformer: 'a transformer at mains frequency',
};
const RECTIFIERS: Readonly<Record<string, string>> = {
  bridge: 'behind a bridge',
  singleDiode: 'behind a single diode, so that one rail is one pole of the mains',
  doubler: 'behind a voltage doubler',
};
const DRIVES: Readonly<Record<string, string>> = { controller: 'driven by a controller', selfOscillating: 'oscillating by itself' };
const FEEDBACKS: Readonly<Record<string, string>> = {
  optocoupler: 'regulated from the output through an optocoupler',
  auxiliaryZener: 'regulated by a Zener on the auxiliary rail',
  auxiliarySense: 'regulated from the primary side, by the auxiliary winding',
  outputSense: 'regulated from the output directly',
  zenerAcross: 'limited by a Zener across the output',
  none: 'without feedback that was recognised',
};

/** "A flyback converter behind a bridge, driven by a controller, regulated ...; the output is isolated from the mains." */
export function topologyText({ converter, rectifier, drive, feedback, isolated }: CircuitResult['topology']): string {
  if (converter === null)
    return rectifier === null
      ? 'Which kind of supply this is was not recognised from the trace.'
      : `Only the input was recognised: ${RECTIFIERS[rectifier] ?? rectifier}.`;
  const parts = [
    [CONVERTERS[converter] ?? converter, rectifier === null ? '' : (RECTIFIERS[rectifier] ?? rectifier)]
      .filter((one) => one !== '')
      .join(' '),
    drive === null ? '' : (DRIVES[drive] ?? drive),
    feedback === null ? '' : (FEEDBACKS[feedback] ?? feedback),
  ].filter((one) => one !== '');
  const end =
    isolated === null
      ? 'whether the output is isolated does not follow from the trace'
      : isolated
        ? 'the output is isolated from the mains'
        : 'the output hangs on the mains';
  const text = `${parts.join(', ')}; ${end}.`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "between bulk plus and switch node; with Q1": the reason behind a job. */
export function jobReason({ at, with: by }: CircuitResult['jobs'][number]): string {
  const between = at.length === 0 ? '' : at.length === 1 ? `at ${at[0]}` : `between ${at.slice(0, -1).join(', ')} and ${at.at(-1)}`;
  return [between, by.length === 0 ? '' : `with ${by.join(', ')}`].filter((one) => one !== '').join('; ');
}

/** Words of the picture of how far set outputs stray. */
export const SPREAD_WORDS = {
  title: 'Set outputs within tolerances',
  window: 'claim',
  harmful: 'harmful',
  caption: (draws: number): string =>
    `what other samples with these parts can put out. Bars: ${draws} seeded draws, each part anywhere inside its tolerance with equal chance. Dashed: every part at its edge at once. Band below: the root of the sum of squares. Solid: the limits of the claim and of what a device must stand.`,
  origin: (step: number): string => `Origin of the band, step ${step}`,
} as const;

/** One level for ears. */
export function spreadSentence({ about, least, most, middle, half }: NonNullable<CircuitResult['spreads']>[number]): string {
  const volts = (value: number): string => amountText({ value, unit: 'V', u: null });
  return `${about}: with every part at its edge ${volts(least)} to ${volts(most)}, as a root of the sum of squares ${volts(middle - half)} to ${volts(middle + half)}.`;
}

export const MAINS_SIDE_WORDS = 'tied to the mains';
export const TOUCHED_SIDE_WORDS = 'can be touched';

/** What the marks beside references mean. */
export const MARK_WORDS: Readonly<Record<PartMark, string>> = {
  fail: 'a finding fails on it',
  inconclusive: 'a finding on it is inconclusive',
  slip: 'probably a slip of the trace',
};

/** "R7, 38k3: upper part of the divider that sets the output; a finding fails on it": a part of a drawing, for ears. */
export function partSpoken(texts: readonly string[], job: JobKey | undefined, mark: PartMark | undefined): string {
  const name = texts.filter((text) => text !== '').join(', ');
  const more = [job === undefined ? NOT_RECOGNISED : JOB_WORDS[job], ...(mark === undefined ? [] : [MARK_WORDS[mark]])];
  return `${name}: ${more.join('; ')}`;
}

/** Above a drawing that is to be printed. */
export const SHEET_WORDS = (paper: string): string =>
  `This sheet is set for ${paper}, lying. Print it with the browser (Ctrl P), or choose “Save as PDF” there; this line is not printed.`;

/** After a drawing was written to a file that is no sheet yet, or one that a browser prints: how it comes to paper. */
export const HOW_TO_PRINT = (isSheet: boolean): string =>
  isSheet
    ? 'Open it in a browser and print it there (Ctrl P).'
    : 'For paper, give a name in .pdf, or in .html for a sheet that a browser prints.';

export const SHEET_TITLE = (name: string, sample: string): string => `${name}, sample ${sample}: schematic`;

/** What stands around the drawing in a PDF. */
export const PAPER_WORDS = {
  drawn: (tool: string, day: string): string =>
    `Drawn by ${tool} on ${day} from the circuit as it was traced; what was not traced is not in it.`,
  noForm: (mark: string): string => `“${mark}” also stands for signs that the fonts of this sheet do not hold.`,
} as const;

export function returnText(name: string): string {
  return `stands for ${name}`;
}

export function schematicSentence(parts: number, ways: number): string {
  const across =
    ways === 0 ? 'no part stands across the barrier' : ways === 1 ? 'one way across the barrier' : `${ways} ways across the barrier`;
  return `Schematic as traced: ${parts} parts, ${across}`;
}
