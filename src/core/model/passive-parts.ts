import type { CircuitPart } from '../circuit/circuit.ts';
import type { Draft } from './draft.ts';

const MELTING_S = 5; // seconds of the square of the rated current, time-lag fuse; see the source in assumed.ts
const HOLDS = 1.5;
const FUSIBLE_TIMES = 30;
const FUSIBLE_S = 0.5;
const USUAL_FUSIBLE_W = 0.5;
const OHM_PER_HENRY = 1000;
const HIGH_V = 100;
const [LOW_RC, HIGH_RC] = [25e-6, 50e-6];
const CLAMPS = 1.65;
const KNEE_A = 1e-3;
const CLAMP_A = 50;
const USUAL_VARISTOR_V = 470;

export function addResistor(draft: Draft, part: CircuitPart): void {
  const ohms = draft.value(part, 'resistance', 'resistance');
  if (ohms === null || ohms <= 0) {
    draft.lack('value', part.ref);
    return;
  }
  if (part.kind !== 'fusibleResistor') {
    draft.add({ kind: 'resistor', ref: part.ref, pins: draft.ends(part), ohms });
    return;
  }
  const watts = draft.rating(part, 'power', 'power') ?? USUAL_FUSIBLE_W;
  const meltingA2s = draft.assume('fusibleMelting', part.ref, (FUSIBLE_TIMES * watts * FUSIBLE_S) / ohms);
  draft.add({ kind: 'fuse', ref: part.ref, pins: draft.ends(part), ohms, meltingA2s, holdingA: Math.sqrt((2 * watts) / ohms) });
}

export function addFuse(draft: Draft, part: CircuitPart): void {
  const amps = draft.rating(part, 'current', 'current');
  const melting = draft.rating(part, 'meltingI2t', 'meltingIntegral');
  if (amps === null) {
    draft.lack('value', part.ref);
    return;
  }
  draft.add({
    kind: 'fuse',
    ref: part.ref,
    pins: draft.ends(part),
    ohms: draft.assume('fuseResistance', part.ref),
    meltingA2s: melting ?? draft.assume('fuseMelting', part.ref, MELTING_S * amps * amps),
    holdingA: draft.assume('fuseHolding', part.ref, HOLDS * amps),
  });
}

export function addThermistor(draft: Draft, part: CircuitPart): void {
  const ohms25 = draft.value(part, 'resistance', 'resistance');
  if (ohms25 === null) {
    draft.lack('value', part.ref);
    return;
  }
  draft.add({
    kind: 'thermistor',
    ref: part.ref,
    pins: draft.ends(part),
    ohms25,
    betaK: draft.assume('thermistorBeta', part.ref),
    heatJPerK: draft.assume('thermistorHeat', part.ref),
    lossWPerK: draft.assume('thermistorLoss', part.ref),
  });
}

/** "10D471": 47 and one zero, volts at 1 mA. */
export function addVaristor(draft: Draft, part: CircuitPart): void {
  const code = /(\d{2})(\d)K?$/.exec(draft.marking(part));
  const volts = code === null ? USUAL_VARISTOR_V : Number(`${code[1]}e${code[2]}`);
  const clamped = draft.assume('varistorCurve', part.ref, CLAMPS * volts);
  draft.add({
    kind: 'varistor',
    ref: part.ref,
    pins: draft.ends(part),
    curve: [
      [KNEE_A, volts],
      [CLAMP_A, clamped],
    ],
  });
}

export function addCapacitor(draft: Draft, part: CircuitPart, initialV: number): void {
  const farads = draft.value(part, 'capacitance', 'capacitance');
  if (farads === null || farads <= 0) {
    draft.lack('value', part.ref);
    return;
  }
  const ratedV = draft.rating(part, 'voltage', 'voltage');
  const electrolytic = part.kind === 'electrolyticCapacitor';
  const ohms = electrolytic
    ? draft.assume('seriesResistance', part.ref, ((ratedV ?? 0) >= HIGH_V ? HIGH_RC : LOW_RC) / farads)
    : draft.assume('plainSeriesResistance', part.ref);
  draft.add({
    kind: 'capacitor',
    ref: part.ref,
    pins: electrolytic ? draft.ends(part, '+', '-') : draft.ends(part),
    farads,
    ohms,
    initialV,
    ...(ratedV === null ? {} : { ratedV }),
    ...(electrolytic ? { electrolytic: true as const } : {}),
  });
}

export function addInductor(draft: Draft, part: CircuitPart): void {
  const henries = draft.value(part, 'inductance', 'inductance');
  if (henries === null) {
    draft.lack('value', part.ref);
    return;
  }
  draft.add({
    kind: 'inductor',
    ref: part.ref,
    pins: draft.ends(part),
    henries,
    ohms: draft.assume('inductorResistance', part.ref, OHM_PER_HENRY * henries),
  });
}

/** A common-mode choke by its two wires. */
export function addChoke(draft: Draft, part: CircuitPart): void {
  const ohms = draft.assume('chokeLeftOut', part.ref);
  for (const [one, other] of [
    ['1', '2'],
    ['3', '4'],
  ] as const)
    draft.add({ kind: 'resistor', ref: `${part.ref}-${one}`, pins: [draft.net(part, one), draft.net(part, other)], ohms });
}

export function addLink(draft: Draft, part: CircuitPart): void {
  draft.add({ kind: 'resistor', ref: part.ref, pins: draft.ends(part), ohms: draft.assume('linkResistance', part.ref) });
}
