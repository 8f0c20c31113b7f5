import type { FaultKept, FaultOutcome } from '../../core/evidence/computed/fault-campaign.ts';
import type { OperatingPoint, Simulation } from '../../core/evidence/computed/simulation.ts';
import { quantityText } from '../../core/quantity/format-quantity.ts';
import type { Grade } from '../../core/source/grade.ts';
import { GRADE_WORDS } from './grade-words.ts';

/** What is assumed of a part, behind "assumed:" and before its value. */
export const ASSUMED_WORDS: Readonly<Record<string, string>> = {
  mainsResistance: 'resistance of the socket circuit',
  plugWay: 'the plug way in which more current flows to earth',
  fuseResistance: 'cold resistance',
  fuseMelting: 'melting integral',
  fuseHolding: 'current it holds for ever',
  fusibleMelting: 'melting integral',
  thermistorBeta: 'how its resistance falls, B',
  thermistorHeat: 'heat it takes up',
  thermistorLoss: 'heat it gives off',
  varistorCurve: 'voltage it clamps at',
  chokeLeftOut: 'the choke as its resistance',
  inductorResistance: 'resistance of the wire',
  linkResistance: 'resistance of the link',
  seriesResistance: 'series resistance',
  plainSeriesResistance: 'series resistance',
  junctionLaw: 'forward law of a part of that kind and size',
  blockingVoltage: 'voltage it blocks, by its number',
  blockingByKind: 'voltage it blocks, by its place',
  junctionCapacitance: 'junction capacitance',
  zenerResistance: 'slope resistance',
  leakageShare: 'leakage inductance',
  windingResistance: 'winding resistance',
  coreResistance: 'core loss as a resistance',
  noSaturation: 'no saturation, since the core is not known',
  windingSelf: 'capacitance of the winding',
  windingCapacitance: 'capacitance between primary and secondary',
  onResistance: 'on-resistance',
  outputCapacitance: 'output capacitance',
  switchCurrent: 'rated current',
  transistorGain: 'current gain',
  transistorStorage: 'transit time',
  idealDrive: 'driven without delay',
  startVoltage: 'supply voltage at which it starts',
  stopVoltage: 'supply voltage at which it stops',
  idleCurrent: 'supply current while stopped',
  runningCurrent: 'supply current while running',
  noTrip: 'no overvoltage trip, since its figure is not known',
  noOverloadTimer: 'no overload timer, since its figure is not known',
  blanking: 'leading-edge blanking',
  turnOffDelay: 'turn-off delay',
  longestOn: 'longest on-time',
  pullVoltage: 'voltage that pulls its feedback pin up',
  pullResistance: 'resistance that pulls its feedback pin up',
  feedbackOffset: 'offset of the feedback pin',
  feedbackAtLimit: 'feedback voltage at the current limit',
  leastPeakShare: 'smallest peak current',
  sampleShare: 'where it samples',
  valleyDelay: 'delay to the valley',
  referenceGain: 'steepness',
  transferRatio: 'current transfer ratio',
  optocouplerPole: 'corner frequency',
  outputSwitchOn: 'the output switch is on',
  chipLeg: 'resistance with which the chip joins a leg in',
  partLeftOut: 'left out: nothing is known of it',
  levelByDivider: 'the level is what the parts set',
  turnsFromStack: 'turns as unwound',
};

/** Units that no reading has: printed without a prefix. */
const PLAIN_UNITS = new Set(['J/K', 'W/K', 'S', 'K']);

/** SI values of a run with three digits; a count or a ratio without a unit. */
export function runAmount(value: number, unit: string): string {
  const digits = Number(value.toPrecision(3));
  if (unit === '1' || unit === '') return String(digits);
  if (PLAIN_UNITS.has(unit)) return `${digits}\u00a0${unit}`;
  return quantityText({ value: Number(value.toPrecision(3)), unit, u: null });
}

type Assumption = Simulation['assumptions'][number];

/** What is assumed, one line for all parts of which the same is assumed, with where it comes from and what that is worth. */
export function assumptionTexts(assumptions: readonly Assumption[]): string[] {
  const lines = new Map<string, { parts: string[]; text: string }>();
  for (const { key, part, value, unit, grade, place } of assumptions) {
    const amount = value === null ? '' : ` ${runAmount(value, unit)}`;
    const what = ASSUMED_WORDS[key] ?? key;
    const text = `${what}${amount} (${place === what ? '' : `${place}; `}${GRADE_WORDS[grade as Grade] ?? grade})`;
    const known = lines.get(text);
    if (known === undefined) lines.set(text, { parts: part === null ? [] : [part], text });
    else if (part !== null && !known.parts.includes(part)) known.parts.push(part);
  }
  return [...lines.values()].map(({ parts, text }) => (parts.length === 0 ? text : `${parts.join(', ')}: ${text}`));
}

export const STATE_WORDS: Readonly<Record<FaultOutcome['state'], string>> = {
  regulates: 'goes on as before',
  limits: 'output sinks',
  hiccups: 'stops and tries again',
  dead: 'gives nothing',
  drains: 'stands still, output drains',
  runaway: 'output runs away',
  ratingExceeded: 'ended at a rating',
  stillMoving: 'still moving',
  noResult: 'no result',
};
/** Signs beside the words: the grid must be readable without colour. */
export const STATE_SIGNS: Readonly<Record<FaultOutcome['state'], string>> = {
  regulates: '=',
  limits: '\u2193',
  hiccups: '\u223f',
  dead: '0',
  drains: '\u21af',
  runaway: '\u2191',
  ratingExceeded: '\u00d7',
  stillMoving: '\u2192',
  noResult: '?',
};

/** Behind the word of a state, where much more current flows through a person than in the healthy circuit. */
export const MORE_TO_EARTH = 'more current to earth';

export const LOAD_WORDS: Readonly<Record<FaultOutcome['load'], string>> = { none: 'no load', standby: '50 mA', full: 'full load' };

export function loadText(load: OperatingPoint['load']): string {
  return typeof load === 'number' ? (load === 1 ? LOAD_WORDS.full : `${Math.round(load * PERCENT)} % load`) : LOAD_WORDS[load];
}
const PERCENT = 100;

export const MODE_WORDS: Readonly<Record<FaultKept['mode'], string>> = { short: 'shorted', open: 'open', worn: 'worn' };

/** "R7 open", "Q1 worn", "D5 shorted", "U1 supply to feedback shorted", "T1 open at S.1". */
export function faultText({ ref, mode, pins }: FaultKept): string {
  const named = pins.filter((pin) => pin !== '1' && pin !== '2');
  if (mode === 'worn' || named.length === 0) return `${ref} ${MODE_WORDS[mode]}`;
  return mode === 'short' ? `${ref} ${pins.join(' to ')} shorted` : `${ref} open at ${pins[0]}`;
}

const CODE_WORDS: Readonly<Record<FaultOutcome['findings'][number]['code'], string>> = {
  ratingExceeded: 'beyond its rating',
  breakdown: 'breaks down',
  fuseOpened: 'opens',
  saturated: 'saturates',
};
const MILLI = 1e3;

/** "C7 beyond its rating of 16 V after 2.1 ms": after a fault; in healthy working there is nothing to count from. */
export function runFindingText({ code, ref, atS, limit }: FaultOutcome['findings'][number], sinceFault: boolean): string {
  const unit = code === 'saturated' ? 'A' : 'V';
  const at = limit === null ? '' : code === 'saturated' ? ` at ${runAmount(limit, unit)}` : ` of ${runAmount(limit, unit)}`;
  const rated = code === 'breakdown' && limit !== null ? `${CODE_WORDS[code]} at its rating` : CODE_WORDS[code];
  return `${ref} ${rated}${at}${sinceFault ? ` after ${(atS * MILLI).toPrecision(3)} ms` : ''}`;
}

export const SIMULATED =
  'Simulated from the traced circuit: a simulation is not a measurement. What it shows is consistent with the parts and with what is assumed of them.';
export const UNBALANCED = 'its energy does not balance: not to be relied on';
export const NOT_SETTLED = 'not settled';
export const ENDS: Readonly<Record<OperatingPoint['outcome'], string>> = {
  completed: '',
  cancelled: 'stopped',
  budgetSpent: 'ended: more steps than are allowed',
  noConsistentState: 'ended: the circuit found no state to rest in',
  ratingExceeded: 'ended at a rating',
};

/** What a drawn line is. */
export const LINE_WORDS: Readonly<Record<string, string>> = {
  output: 'Output',
  'mains-current': 'Current from the mains',
  switch: 'Across the switch',
  'primary-current': 'Current in the primary',
  bulk: 'Behind the rectifier',
};
