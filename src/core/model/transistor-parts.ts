import type { CircuitPart } from '../circuit/circuit.ts';
import type { Draft } from './draft.ts';
import { curveFor } from './junction-law.ts';
import { findMarked } from './marked-semiconductor.ts';

const USUAL_SWITCH_V = 650;
const USUAL_SMALL_V = 40;
const ON_OHM_AMPERE = 10;
const [COSS_F, COSS_F_PER_A] = [20e-12, 8e-12];
const AVALANCHE_OHMS = 30;

/** Field-effect switch; without a number one of 4 A and 650 V. */
export function addSwitch(draft: Draft, part: CircuitPart, ref: string, pins: readonly [string, string]): void {
  const marked = findMarked(draft.marking(part));
  const amps = draft.rating(part, 'current', 'current') ?? marked?.amps ?? draft.assume('switchCurrent', ref);
  draft.assume('idealDrive', ref);
  draft.add({
    kind: 'switch',
    ref,
    pins,
    onOhms: draft.assume('onResistance', ref, ON_OHM_AMPERE / amps),
    outputF: draft.assume('outputCapacitance', ref, COSS_F + COSS_F_PER_A * amps),
    body: curveFor('silicon', Math.max(1, amps / 2)),
    breakdown: { volts: blocking(draft, part, marked?.volts ?? null, USUAL_SWITCH_V), ohms: AVALANCHE_OHMS },
  });
}

function blocking(draft: Draft, part: CircuitPart, marked: number | null, usual: number): number {
  const printed = draft.rating(part, 'voltage', 'voltage');
  if (printed !== null) return printed;
  return marked === null ? draft.assume('blockingByKind', part.ref, usual) : draft.assume('blockingVoltage', part.ref, marked);
}

/** By place: the high-voltage transistor stores much charge, the small one beside it little. */
const KINDS = {
  power: { gain: 20, transitS: 40e-9, baseV: 0.73, baseOhms: 0.5, saturationOhms: 0.5, collectorF: 15e-12, baseF: 150e-12 },
  small: { gain: 120, transitS: 0.6e-9, baseV: 0.68, baseOhms: 1, saturationOhms: 1, collectorF: 6e-12, baseF: 20e-12 },
} as const;
const SATURATION_V = 0.05;
const BASE_BREAKDOWN_V = 9;

export function addBipolar(draft: Draft, part: CircuitPart): void {
  const power = draft.job(part) === 'switch';
  const kind = KINDS[power ? 'power' : 'small'];
  const marked = findMarked(draft.marking(part));
  draft.add({
    kind: 'bipolar',
    ref: part.ref,
    collector: draft.net(part, 'C'),
    base: draft.net(part, 'B'),
    emitter: draft.net(part, 'E'),
    ...kind,
    gain: draft.assume('transistorGain', part.ref, kind.gain),
    transitS: draft.assume('transistorStorage', part.ref, kind.transitS),
    saturationV: SATURATION_V,
    baseBreakdownV: BASE_BREAKDOWN_V,
    breakdown: { volts: blocking(draft, part, marked?.volts ?? null, power ? USUAL_SWITCH_V : USUAL_SMALL_V), ohms: AVALANCHE_OHMS },
  });
}
