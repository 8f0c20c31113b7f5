import { type Refusal, refuse } from '../quantity/refusal.ts';
import type { Circuit, Controller, CurvePoints, Part } from './circuit.ts';
import type { SolverRequest } from './request.ts';
import { TICK_S } from './topology.ts';

/** Longest time one request may ask for, seconds. House choice: far beyond what a converter needs to settle. */
const LONGEST_S = 60;
/** Straight pieces of one curve: the list of regions keeps them in a byte, with room for modes. */
const MOST_POINTS = 12;

/** Less leakage, as a share of a winding's inductance, is beyond what sixteen digits can keep apart; no wound part has so little. House choice. */
const LEAST_LEAKAGE = 1e-5;

/** Everything about a request that cannot be run; empty when it can. */
export function validateRequest(request: SolverRequest): Refusal[] {
  const { circuit, stopS, fromS, probes, waveform } = request;
  const out = validateCircuit(circuit);
  if (!(stopS > TICK_S && stopS <= LONGEST_S))
    out.push(refuse('time-out-of-range', String(stopS), `a time up to ${LONGEST_S} s`, { place: '/stopS' }));
  if (!(fromS >= 0 && fromS < stopS)) out.push(refuse('time-out-of-range', String(fromS), 'a time before the end', { place: '/fromS' }));
  if (waveform !== undefined && !(waveform.spacingS >= TICK_S))
    out.push(refuse('time-out-of-range', String(waveform.spacingS), `a spacing of at least ${TICK_S} s`, { place: '/waveform/spacingS' }));
  const nets = new Set([circuit.earth, ...circuit.parts.flatMap(netsOf)]);
  for (const { id, of } of probes) {
    const place = `/probes/${id}`;
    if ('volts' in of) {
      for (const net of of.volts) if (!nets.has(net)) out.push(refuse('unknown-net', net, 'a net that a part is connected to', { place }));
      continue;
    }
    const ref = 'touchOf' in of ? of.touchOf : of.ampsInto;
    const part = circuit.parts.find((one) => one.ref === ref);
    if (part === undefined) out.push(refuse('unknown-part', ref, 'a part of the circuit', { place }));
    else if ('touchOf' in of && part.kind !== 'bodyNetwork') out.push(refuse('wrong-kind', part.kind, 'a body network', { place }));
    else if ('ampsInto' in of) {
      if (part.kind === 'transformer' && !part.windings.some(({ name }) => name === of.winding))
        out.push(refuse('unknown-winding', of.winding ?? '', 'the name of a winding', { place }));
      if (part.kind === 'bipolar' || part.kind === 'optocoupler' || part.kind === 'controller' || part.kind === 'bodyNetwork')
        out.push(refuse('wrong-kind', part.kind, 'a part with two pins, or a winding', { place }));
    }
  }
  return out;
}

export function netsOf(part: Part): readonly string[] {
  switch (part.kind) {
    case 'transformer':
      return part.windings.flatMap(({ pins }) => pins);
    case 'bipolar':
      return [part.collector, part.base, part.emitter];
    case 'shuntRegulator':
      return [part.cathode, part.anode, part.reference];
    case 'optocoupler':
      return [...part.led, ...part.transistor];
    case 'controller':
      return [
        part.ground,
        part.supply,
        part.law.sense,
        ...('feedback' in part.law ? [part.law.feedback] : []),
        ...('auxiliary' in part.law ? [part.law.auxiliary] : []),
      ];
    default:
      return part.pins;
  }
}

function validateCircuit(circuit: Circuit): Refusal[] {
  const out: Refusal[] = [];
  const seen = new Set<string>();
  for (const part of circuit.parts) {
    if (seen.has(part.ref)) out.push(refuse('repeated-part', part.ref, 'each part once', { place: `/parts/${part.ref}` }));
    seen.add(part.ref);
    out.push(...validateNumbers(part, `/parts/${part.ref}`, MAY_BE_ZERO), ...validatePart(part, circuit));
  }
  if (!circuit.parts.some((part) => netsOf(part).includes(circuit.earth)))
    out.push(refuse('unknown-net', circuit.earth, 'an earth that a part is connected to', { place: '/earth' }));
  const frequencies = new Set(circuit.parts.flatMap((part) => (part.kind === 'mains' ? [part.hertz] : [])));
  if (frequencies.size > 1)
    out.push(refuse('several-frequencies', [...frequencies].join(', '), 'one mains frequency', { place: '/parts' }));
  return out;
}

/** Numbers that may be nothing or less; every other number in a part is above zero. */
const MAY_BE_ZERO = new Set([
  'initialV',
  'initialA',
  'phaseDeg',
  'leakageH',
  'amps',
  'delayS',
  'offsetV',
  'leastV',
  'saturationV',
  'idleA',
  'stopV',
  'gainPerV',
  'volts',
  'leakS',
  'blankS',
]);
const MAY_BE_NEGATIVE = new Set(['initialV', 'initialA', 'phaseDeg', 'offsetV', 'volts']);

function validateNumbers(value: object, place: string, zero: ReadonlySet<string>): Refusal[] {
  return Object.entries(value).flatMap(([key, one]): Refusal[] => {
    const at = `${place}/${key}`;
    if (typeof one === 'number') {
      const good = Number.isFinite(one) && (one > 0 || (one === 0 && zero.has(key)) || MAY_BE_NEGATIVE.has(key));
      return good
        ? []
        : [refuse('out-of-range', String(one), zero.has(key) ? 'a number that is not negative' : 'a number above zero', { place: at })];
    }
    if (Array.isArray(one))
      return key === 'windings' ? one.flatMap((winding, index) => validateNumbers(winding, `${at}/${index}`, zero)) : [];
    return typeof one === 'object' && one !== null ? validateNumbers(one, at, zero) : [];
  });
}

function validateCurve(points: CurvePoints, place: string): Refusal[] {
  if (points.length < 2 || points.length > MOST_POINTS)
    return [refuse('curve-length', String(points.length), `2 to ${MOST_POINTS} points`, { place })];
  const rising = points.every(([amps, volts], index) => index === 0 || (amps > points[index - 1]![0] && volts > points[index - 1]![1]));
  const starts = points[0]![0] >= 0 && points[0]![1] > 0;
  if (!rising || !starts)
    return [refuse('curve-not-rising', JSON.stringify(points), 'positive points, each above the one before', { place })];
  // a chord less steep than the one before would not be a junction: knees must come in order
  const knee = points[1]![1] - (points[1]![0] * (points[1]![1] - points[0]![1])) / (points[1]![0] - points[0]![0]);
  return knee > 0
    ? []
    : [refuse('curve-without-knee', JSON.stringify(points), 'a first chord that meets zero current at a positive voltage', { place })];
}

function validatePart(part: Part, circuit: Circuit): Refusal[] {
  const place = `/parts/${part.ref}`;
  switch (part.kind) {
    case 'diode':
    case 'optocoupler': {
      const out = validateCurve(part.forward, `${place}/forward`);
      if (part.kind === 'optocoupler' && part.collectorA.length !== part.forward.length)
        out.push(
          refuse('curve-length', String(part.collectorA.length), 'one collector current for each point of the curve', {
            place: `${place}/collectorA`,
          }),
        );
      return out;
    }
    case 'bipolar':
      return part.baseCurve === undefined ? [] : validateCurve(part.baseCurve, `${place}/baseCurve`);
    case 'varistor':
      return validateCurve(part.curve, `${place}/curve`);
    case 'switch':
      return validateCurve(part.body, `${place}/body`);
    case 'transformer': {
      const tight = part.windings.filter(({ leakageH }) => leakageH === 0).length;
      const out: Refusal[] = [];
      if (part.windings.length < 2) out.push(refuse('too-few-windings', String(part.windings.length), 'at least two windings', { place }));
      const turns = part.windings[0]?.turns ?? 1;
      for (const { name, turns: own, leakageH } of part.windings) {
        const share = leakageH / (part.magnetisingH * (own / turns) * (own / turns));
        if (leakageH > 0 && share < LEAST_LEAKAGE)
          out.push(
            refuse('no-leakage', String(leakageH), `a leakage of at least ${LEAST_LEAKAGE} of the winding's inductance`, {
              place: `${place}/windings/${name}`,
            }),
          );
      }
      for (const { windings } of part.between ?? [])
        for (const name of windings)
          if (!part.windings.some((winding) => winding.name === name))
            out.push(refuse('unknown-winding', name, 'the name of a winding', { place: `${place}/between` }));
      if (tight > 1) out.push(refuse('no-leakage', String(tight), 'leakage in all windings but one', { place: `${place}/windings` }));
      return out;
    }
    case 'controller':
      return validateController(part, circuit, place);
    default:
      return [];
  }
}

function validateController(part: Controller, circuit: Circuit, place: string): Refusal[] {
  const out: Refusal[] = [];
  if (!circuit.parts.some(({ ref, kind }) => ref === part.drives && kind === 'switch'))
    out.push(refuse('unknown-part', part.drives, 'a switch for the controller to drive', { place: `${place}/drives` }));
  if (part.lockout.stopV >= part.lockout.startV)
    out.push(
      refuse('out-of-range', String(part.lockout.stopV), 'a stop voltage below the start voltage', { place: `${place}/lockout/stopV` }),
    );
  return out;
}
