import type { CircuitPart } from '../circuit/circuit.ts';
import type { JobKey } from '../circuit/recognise/job.ts';
import type { Draft } from './draft.ts';
import { capacitanceFor, curveFor, type Junction } from './junction-law.ts';
import { findMarked } from './marked-semiconductor.ts';

/** Slope of a broken-down junction, ohm. House choice: what decides is that it was reached. */
const BROKEN_OHMS = 20;
const SCHOTTKY_UP_TO_V = 120;
const ZENER_LEAST_A = 0.5;

/** Rated voltage and current where neither the part nor its number says them. */
const USUAL: Partial<Readonly<Record<JobKey, { readonly volts: number; readonly amps: number }>>> = {
  mainsRectifier: { volts: 600, amps: 1 },
  clampDiode: { volts: 600, amps: 1 },
  auxiliaryRectifier: { volts: 100, amps: 0.2 },
  outputRectifier: { volts: 100, amps: 3 },
  freewheel: { volts: 600, amps: 1 },
};
const OTHER = { volts: 100, amps: 0.2 };

interface Rated {
  readonly volts: number;
  readonly amps: number;
}

/** What a diode stands: as printed or entered, else by its number, else by its place, which is stated. */
export function ratedOf(draft: Draft, part: CircuitPart): Rated {
  const marked = findMarked(draft.marking(part));
  const usual = USUAL[draft.job(part) ?? 'load'] ?? OTHER;
  const printed = draft.rating(part, 'voltage', 'voltage');
  const amps = draft.rating(part, 'current', 'current') ?? marked?.amps ?? usual.amps;
  if (printed !== null) return { volts: printed, amps };
  if (marked?.volts != null) return { volts: draft.assume('blockingVoltage', part.ref, marked.volts), amps };
  return { volts: draft.assume('blockingByKind', part.ref, usual.volts), amps };
}

export function addDiode(draft: Draft, part: CircuitPart): void {
  const rated = ratedOf(draft, part);
  const kind: Junction =
    draft.job(part) === 'outputRectifier' && rated.volts <= SCHOTTKY_UP_TO_V
      ? 'schottky'
      : rated.amps < ZENER_LEAST_A
        ? 'signal'
        : 'silicon';
  put(draft, part.ref, draft.ends(part, 'A', 'K'), kind, rated);
}

function put(draft: Draft, ref: string, pins: readonly [string, string], kind: Junction, { volts, amps }: Rated): void {
  draft.assume('junctionLaw', ref);
  draft.add({
    kind: 'diode',
    ref,
    pins,
    forward: curveFor(kind, amps),
    junctionF: draft.assume('junctionCapacitance', ref, capacitanceFor(kind, amps)),
    breakdown: { volts, ohms: BROKEN_OHMS },
    ...(kind === 'schottky' ? { schottky: true as const } : {}),
  });
}

/** Four diodes under one name: "BD1-1" from the first pole to plus, "BD1-2" from the second, "-3" and "-4" from minus to the poles. */
export function addBridge(draft: Draft, part: CircuitPart): void {
  const rated = ratedOf(draft, part);
  const [one, two, plus, minus] = ['~1', '~2', '+', '-'].map((pin) => draft.net(part, pin)) as [string, string, string, string];
  const arms = [
    [one, plus],
    [two, plus],
    [minus, one],
    [minus, two],
  ] as const;
  arms.forEach((pins, index) => {
    put(draft, `${part.ref}-${index + 1}`, pins, 'silicon', rated);
  });
}

export function addZener(draft: Draft, part: CircuitPart): void {
  const volts = draft.value(part, 'outputVoltage', 'voltage');
  if (volts === null || volts <= 0) {
    draft.lack('value', part.ref);
    return;
  }
  draft.assume('junctionLaw', part.ref);
  draft.add({
    kind: 'diode',
    ref: part.ref,
    pins: draft.ends(part, 'A', 'K'),
    forward: curveFor('signal', OTHER.amps),
    junctionF: draft.assume('junctionCapacitance', part.ref, capacitanceFor('silicon', 1)),
    breakdown: { volts, ohms: draft.assume('zenerResistance', part.ref), intended: true },
  });
}

export function addLamp(draft: Draft, part: CircuitPart): void {
  draft.assume('junctionLaw', part.ref);
  const junctionF = draft.assume('junctionCapacitance', part.ref, capacitanceFor('lamp', OTHER.amps));
  draft.add({ kind: 'diode', ref: part.ref, pins: draft.ends(part, 'A', 'K'), forward: curveFor('lamp', OTHER.amps), junctionF });
}
