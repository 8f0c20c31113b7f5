import type { CircuitPart } from '../circuit/circuit.ts';
import type { Kind } from '../quantity/unit.ts';
import type { ControlLaw, Lockout } from '../solver/circuit.ts';
import { findRead } from '../working/bench/open-value.ts';
import { lawFigure } from '../working/circuit/law-of.ts';
import { ASSUMED, type AssumedKey } from './assumed.ts';
import type { Draft } from './draft.ts';
import { type Stack, stackFigure, stackOf } from './transformer-part.ts';
import { addSwitch } from './transistor-parts.ts';

/** Names that sheets give to the pins of such chips. */
const PINS = {
  supply: ['VDD', 'VCC', 'VIN', 'HVDD'],
  ground: ['GND', 'VSS', 'G'],
  feedback: ['FB', 'COMP', 'OPTO'],
  sense: ['CS', 'ISENSE', 'SENSE', 'IS'],
  drive: ['DRV', 'GATE', 'OUT', 'DRIVE'],
  drain: ['DRAIN', 'D', 'SW'],
  source: ['SOURCE', 'S'],
  auxiliary: ['AUX', 'ZCD', 'DMG', 'DEM', 'VS', 'VSE'],
} as const;
export type ControllerPin = keyof typeof PINS;

export function pinNet(part: CircuitPart, which: ControllerPin): string | null {
  return part.pins.find(({ pin }) => (PINS[which] as readonly string[]).includes(pin.toUpperCase()))?.net ?? null;
}

const PULL_OHMS = 1;
/** Burst begins a little above the smallest peak, and ends a little above that, volts at the feedback pin. House choice. */
const [BURST_STOP_V, BURST_GO_V] = [0.02, 0.12];
const OVERLOAD_V_ABOVE = 0.1;
/** A sense resistor of a chip with the switch inside, ohm. */
const INNER_SENSE_OHMS = 0.1;
const [VALLEY_ON_S, VALLEY_OFF_LEAST_S, VALLEY_OFF_MOST_S] = [20e-6, 7e-6, 50e-6];
const PRIMARY = { hertzLeast: 1000, leastShare: 0.25, gainPerV: 0.2, stepPerV: 0.02, conductionMost: 0.5 } as const;

/** A controller by its law. Its law is named in the circuit (`law` of the part) or with the transformer; nothing is run without one. */
export function addController(draft: Draft, part: CircuitPart): void {
  const { recognised } = draft;
  const { converter } = recognised;
  const own = draft.evidence(part);
  const stack = transformerStack(draft);
  const figure = (key: string, kind: Kind): number | null => lawFigure(own, key, kind, 'x')?.value ?? null;
  const or = (key: string, kind: Kind, assumed: AssumedKey): number => figure(key, kind) ?? draft.assume(assumed, part.ref);
  const named = findRead<Record<string, unknown>>(own.law as never)?.['law'];
  const law = typeof named === 'string' ? named : stack === null ? null : findRead(stack.law);
  const ground = pinNet(part, 'ground') ?? [...(converter?.minus ?? [])][0] ?? '';
  const supply = pinNet(part, 'supply') ?? converter?.auxiliaries[0]?.rail ?? null;
  if (supply === null) {
    draft.lack('net', `${part.ref} supply`);
    return;
  }
  const inside = converter?.switch?.id === part.id;
  const drives = inside ? `${part.ref}-switch` : (converter?.switch?.ref ?? null);
  if (drives === null) {
    draft.lack('net', `${part.ref} drive`);
    return;
  }
  const sense = senseOf(draft, part, inside, ground);
  const limitV = limitOf(draft, part, stack, figure('currentLimit', 'voltage'), sense.ohms);
  if (limitV === null) {
    draft.lack('currentLimit', part.ref);
    return;
  }
  const limit = {
    sense: sense.net,
    limitV,
    blankS: or('blanking', 'time', 'blanking'),
    delayS: or('turnOffDelay', 'time', 'turnOffDelay'),
  };
  const made = lawOf(draft, part, law, limit, { figure, or, stack, ground });
  if (made === null) return;
  if (inside) addSwitch(draft, part, drives, [pinNet(part, 'drain') ?? converter?.switchNode ?? '', sense.net]);
  draft.add({ kind: 'controller', ref: part.ref, drives, ground, supply, lockout: lockoutOf(draft, part, figure, or), law: made });
}

function transformerStack(draft: Draft): Stack | null {
  const id = draft.recognised.converter?.primary?.part;
  const part = draft.recognised.graph.circuit.parts.find((one) => one.id === id);
  return part === undefined ? null : stackOf(draft, part);
}

/** Where the current is sensed, and over how many ohm. */
function senseOf(draft: Draft, part: CircuitPart, inside: boolean, ground: string): { net: string; ohms: number | null } {
  const { converter, graph } = draft.recognised;
  const resistors = (converter?.sense ?? []).flatMap((id) => graph.parts.get(id) ?? []);
  const ohms = resistors.map((one) => draft.value(one, 'resistance', 'resistance'));
  const together = ohms.length === 0 || ohms.includes(null) ? null : 1 / ohms.reduce((sum: number, one) => sum + 1 / one!, 0);
  const net = pinNet(part, 'sense') ?? pinNet(part, 'source');
  if (net !== null && net !== ground) return { net, ohms: together };
  if (!inside) return { net: converter?.switch?.pins.find(({ pin }) => pin === 'S')?.net ?? ground, ohms: together };
  const inner = `${part.ref}/sense`;
  draft.add({ kind: 'resistor', ref: inner, pins: [inner, ground], ohms: INNER_SENSE_OHMS });
  return { net: inner, ohms: INNER_SENSE_OHMS };
}

/** Voltage at the sense pin that ends a pulse: off its sheet, else the peak current that was measured over the resistor that is there. */
function limitOf(draft: Draft, part: CircuitPart, stack: Stack | null, sheet: number | null, ohms: number | null): number | null {
  if (sheet !== null) return sheet;
  const peak = lawFigure(draft.evidence(part), 'peakCurrent', 'current', 'x')?.value ?? stackFigure(draft, stack, 'peakCurrent');
  return peak === null || ohms === null ? null : peak * ohms;
}

interface Figures {
  readonly figure: (key: string, kind: Kind) => number | null;
  readonly or: (key: string, kind: Kind, assumed: AssumedKey) => number;
  readonly stack: Stack | null;
  readonly ground: string;
}
type Limit = { readonly sense: string; readonly limitV: number; readonly blankS: number; readonly delayS: number };

function lawOf(draft: Draft, part: CircuitPart, law: unknown, limit: Limit, { figure, or, stack, ground }: Figures): ControlLaw | null {
  if (law === 'primaryCurrent') {
    const auxiliary = pinNet(part, 'auxiliary') ?? draft.recognised.regulation?.divider?.at ?? null;
    const kneeV = figure('kneeVoltage', 'voltage');
    const hertzMost = figure('frequency', 'frequency') ?? stackFigure(draft, stack, 'frequency');
    if (kneeV === null) draft.lack('kneeVoltage', part.ref);
    if (hertzMost === null) draft.lack('frequency', part.ref);
    if (auxiliary === null) draft.lack('net', `${part.ref} auxiliary`);
    if (kneeV === null || hertzMost === null || auxiliary === null) return null;
    return {
      type: 'primarySide',
      ...limit,
      auxiliary,
      kneeV,
      sampleAt: draft.assume('sampleShare', part.ref),
      hertzMost,
      onMostS: ASSUMED.longestOn.value / hertzMost,
      ...PRIMARY,
    };
  }
  if (law !== 'fixedFrequency' && law !== 'valleySwitched') {
    draft.lack('law', part.ref);
    return null;
  }
  const feedback = pinNet(part, 'feedback');
  if (feedback === null) {
    draft.lack('net', `${part.ref} feedback`);
    return null;
  }
  const offsetV = draft.assume('feedbackOffset', part.ref);
  const atLimit = draft.assume('feedbackAtLimit', part.ref);
  const divider = (atLimit - offsetV) / limit.limitV;
  const leastV = draft.assume('leastPeakShare', part.ref) * limit.limitV;
  const stopV = offsetV + divider * leastV + BURST_STOP_V;
  const overloadS = figure('overloadAfter', 'time');
  if (overloadS === null) draft.assume('noOverloadTimer', part.ref);
  const pull = `${part.ref}/pull`;
  draft.add({ kind: 'dcSource', ref: pull, pins: [pull, ground], volts: or('pullVoltage', 'voltage', 'pullVoltage'), ohms: PULL_OHMS });
  const ohms = or('pullResistance', 'resistance', 'pullResistance');
  draft.add({ kind: 'resistor', ref: `${part.ref}/pull-up`, pins: [pull, feedback], ohms });
  const shared = {
    ...limit,
    feedback,
    offsetV,
    divider,
    leastV,
    burst: { stopV, goV: stopV + BURST_GO_V },
    ...(overloadS === null ? {} : { overload: { volts: atLimit + OVERLOAD_V_ABOVE, seconds: overloadS, after: 'hiccup' as const } }),
  };
  if (law === 'valleySwitched') {
    const auxiliary = pinNet(part, 'auxiliary');
    if (auxiliary === null) {
      draft.lack('net', `${part.ref} auxiliary`);
      return null;
    }
    return {
      type: 'valley',
      ...shared,
      auxiliary,
      onMostS: VALLEY_ON_S,
      offLeastS: VALLEY_OFF_LEAST_S,
      offMostS: VALLEY_OFF_MOST_S,
      valleyDelayS: draft.assume('valleyDelay', part.ref),
    };
  }
  const hertz = figure('frequency', 'frequency') ?? stackFigure(draft, stack, 'frequency');
  if (hertz === null) {
    draft.lack('frequency', part.ref);
    return null;
  }
  const dutyMost = figure('longestOn', 'ratio') ?? stackFigure(draft, stack, 'longestOn') ?? draft.assume('longestOn', part.ref);
  return { type: 'peakCurrent', ...shared, hertz, dutyMost };
}

function lockoutOf(draft: Draft, part: CircuitPart, figure: Figures['figure'], or: Figures['or']): Lockout {
  const trip = figure('overvoltageTrip', 'voltage');
  if (trip === null) draft.assume('noTrip', part.ref);
  return {
    startV: or('startVoltage', 'voltage', 'startVoltage'),
    stopV: or('stopVoltage', 'voltage', 'stopVoltage'),
    idleA: or('idleCurrent', 'current', 'idleCurrent'),
    runningA: or('runningCurrent', 'current', 'runningCurrent'),
    ...(trip === null ? {} : { overvoltage: { volts: trip, after: 'hiccup' as const } }),
  };
}
