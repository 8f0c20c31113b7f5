import { bodyNetworkParts } from './body-network.ts';
import type { Circuit, Controller, CurvePoints, Diode, Part, Transformer } from './circuit.ts';
import {
  type Bend,
  type Charge,
  type Conductance,
  type Core,
  type Heated,
  type Light,
  type Limited,
  layStates,
  type Plan,
  type Source,
} from './plan.ts';
import { baseCurve, diodeCurve, OFF_SIEMENS, reversedCurve, sinkCurve, straight, symmetricalCurve } from './segment-curve.ts';
import { coolingSteps } from './thermistor.ts';

/** Series resistance of junction capacitances, ohm: well below what surrounds them. House choice. */
const JUNCTION_OHMS = 1;
/** Junction capacitance of a diode of which nothing is known, farad: without one its voltage would have no inertia. House choice. */
const JUNCTION_F = 2e-12;
/** Capacitance of a supply pin, its die and tracks, farad: with its capacitor open, a supply must still have some inertia. House choice. */
const PIN_F = 100e-12;
/** A controller's supply current is drawn in full from this voltage on. House choice. */
const SUPPLY_FROM_V = 1;
/** Reverse conduction of a bipolar transistor, through its collector junction: volts and ohms. House choice, common practice. */
const REVERSE = { volts: 0.9, ohms: 1 } as const;

/** A base has a breakdown and an off region before it stores charge. */
const FIRST_STORED = 2;

const oneCircle = 2 * Math.PI;

/** Numbers the nets and turns parts into branches. The circuit has been validated. */
export function planCircuit(circuit: Circuit): Plan {
  const nodeOf = new Map<string, number>([[circuit.earth, -1]]);
  const node = (net: string): number => {
    const known = nodeOf.get(net);
    if (known !== undefined) return known;
    nodeOf.set(net, nodeOf.size - 1);
    return nodeOf.size - 2;
  };
  const conductances: Conductance[] = [];
  const charges: Charge[] = [];
  const sources: Source[] = [];
  const cores: Core[] = [];
  const bends: Bend[] = [];
  const limited: Limited[] = [];
  const lights: Light[] = [];
  const heated: Heated[] = [];
  let radPerSecond = 0;

  const ends = (ref: string, [a, b]: readonly [string, string]) => ({ ref, a: node(a), b: node(b) });
  const conduct = (ref: string, pins: readonly [string, string], siemens: number) => conductances.push({ ...ends(ref, pins), siemens });
  const bend = (ref: string, pins: readonly [string, string], modes: Bend['modes'], stored: Bend['stored'] = null) =>
    bends.push({ ...ends(ref, pins), modes, stored }) - 1;
  const hold = (ref: string, pins: readonly [string, string], farads: number, ohms = JUNCTION_OHMS) =>
    charges.push({ ...ends(ref, pins), farads, ohms, initialV: 0, ratedV: null });

  const addDiode = (part: Diode): void => {
    bend(part.ref, part.pins, [diodeCurve(part.forward, part.leakS ?? OFF_SIEMENS, part.breakdown)]);
    hold(part.ref, part.pins, part.junctionF ?? JUNCTION_F);
  };
  const addTransformer = (part: Transformer): void => {
    const [first] = part.windings;
    cores.push({
      ref: part.ref,
      magnetisingH: part.magnetisingH,
      initialA: 0,
      saturation: part.saturation ?? null,
      windings: part.windings.map(({ name, pins, turns, leakageH, ohms }) => ({
        name,
        a: node(pins[0]),
        b: node(pins[1]),
        ratio: turns / first!.turns,
        leakageH,
        ohms,
      })),
    });
    for (const { pins, selfF, leakageH } of part.windings) {
      conduct(part.ref, pins, OFF_SIEMENS);
      // twice the characteristic resistance leaves no ring between leakage and self-capacitance
      if (selfF !== undefined) hold(part.ref, pins, selfF, Math.max(JUNCTION_OHMS, 2 * Math.sqrt(leakageH / selfF)));
    }
    for (const { windings, farads, ohms } of part.between ?? []) {
      const [one, other] = windings.map((name) => part.windings.find((winding) => winding.name === name)!.pins[0]);
      hold(part.ref, [one!, other!], farads, ohms);
    }
    if (part.coreOhms !== undefined) conduct(part.ref, first!.pins, 1 / part.coreOhms);
  };
  const addController = (part: Controller): void => {
    const { idleA, runningA } = part.lockout;
    hold(part.ref, [part.supply, part.ground], PIN_F);
    bend(part.ref, [part.supply, part.ground], [sinkCurve(idleA, SUPPLY_FROM_V), sinkCurve(runningA, SUPPLY_FROM_V)]);
    const pins = [
      part.law.sense,
      ...('feedback' in part.law ? [part.law.feedback] : []),
      ...('auxiliary' in part.law ? [part.law.auxiliary] : []),
    ];
    for (const pin of pins) if (pin !== part.ground) conduct(part.ref, [pin, part.ground], OFF_SIEMENS);
  };

  const add = (part: Part): void => {
    switch (part.kind) {
      case 'resistor':
        conduct(part.ref, part.pins, 1 / part.ohms);
        break;
      case 'capacitor':
        charges.push({
          ...ends(part.ref, part.pins),
          farads: part.farads,
          ohms: part.ohms,
          initialV: part.initialV ?? 0,
          ratedV: part.ratedV ?? null,
        });
        break;
      case 'inductor':
        cores.push({
          ref: part.ref,
          magnetisingH: part.henries,
          initialA: part.initialA ?? 0,
          saturation: part.saturation ?? null,
          windings: [{ name: part.ref, a: node(part.pins[0]), b: node(part.pins[1]), ratio: 1, leakageH: 0, ohms: part.ohms }],
        });
        conduct(part.ref, part.pins, OFF_SIEMENS);
        break;
      case 'transformer':
        addTransformer(part);
        break;
      case 'diode':
        addDiode(part);
        break;
      case 'varistor':
        bend(part.ref, part.pins, [symmetricalCurve(part.curve, OFF_SIEMENS)]);
        break;
      case 'switch':
        bend(part.ref, part.pins, [reversedCurve(diodeCurve(part.body, OFF_SIEMENS, part.breakdown)), straight(1 / part.onOhms)]);
        hold(part.ref, part.pins, part.outputF);
        break;
      case 'fuse': {
        const { ref, meltingA2s, holdingA } = part;
        heated.push({
          ref,
          bend: bend(ref, part.pins, [straight(1 / part.ohms), straight(OFF_SIEMENS)]),
          law: { kind: 'melts', meltingA2s, holdingA },
        });
        break;
      }
      case 'thermistor': {
        const { ref, heatJPerK, lossWPerK } = part;
        const { ohms, riseK } = coolingSteps(part.ohms25, part.betaK);
        heated.push({
          ref,
          bend: bend(
            ref,
            part.pins,
            ohms.map((one) => straight(1 / one)),
          ),
          law: { kind: 'falls', ohms, riseK, heatJPerK, lossWPerK },
        });
        break;
      }
      case 'bipolar': {
        const { ref, base, emitter, collector } = part;
        // at any charge the same voltage, where nothing better is known
        const points = part.baseCurve ?? ([0, 1].map((amps) => [amps, part.baseV]) as CurvePoints);
        const junction = baseCurve(points, part.baseOhms, { volts: part.baseBreakdownV, ohms: part.baseOhms, intended: true });
        const slope = junction[FIRST_STORED]!.perStored! * -part.baseOhms;
        const at = bend(ref, [base, emitter], [junction], {
          transitS: part.transitS,
          gain: part.gain,
          firstRegion: FIRST_STORED,
          ohms: slope > 0 ? slope : 1,
        });
        limited.push({
          ...ends(ref, [collector, emitter]),
          zeroV: part.saturationV,
          ohms: part.saturationOhms,
          drive: { by: 'stored', bend: at },
        });
        const back = diodeCurve(
          [
            [0, REVERSE.volts],
            [1, REVERSE.volts + REVERSE.ohms],
          ],
          OFF_SIEMENS,
          part.breakdown,
        );
        bend(ref, [collector, emitter], [reversedCurve(back)]);
        hold(ref, [collector, emitter], part.collectorF);
        hold(ref, [base, emitter], part.baseF);
        if (part.collectorBaseF !== undefined) hold(ref, [collector, base], part.collectorBaseF);
        break;
      }
      case 'shuntRegulator': {
        const { ref, siemens, refV: fromV } = part;
        const drive = { by: 'voltage', plus: node(part.reference), minus: node(part.anode), siemens, fromV } as const;
        limited.push({ ...ends(ref, [part.cathode, part.anode]), zeroV: part.leastV, ohms: part.leastOhms, drive });
        conduct(ref, [part.cathode, part.anode], OFF_SIEMENS);
        conduct(ref, [part.reference, part.anode], OFF_SIEMENS);
        break;
      }
      case 'optocoupler': {
        const { ref } = part;
        const curve = diodeCurve(part.forward, OFF_SIEMENS);
        const at = bend(ref, part.led, [curve]);
        // the photocurrent is straight between the same points as the diode's own curve
        const lines = curve.map((segment, index) => {
          if (index === 0) return { siemens: 0, amps0: 0 };
          const [v0, v1] = [part.forward[index - 1]![1], part.forward[index]![1]];
          const [c0, c1] = [part.collectorA[index - 1]!, part.collectorA[index]!];
          const from = index === 1 ? segment.fromV : v0;
          const start = index === 1 ? 0 : c0;
          const slope = (c1 - start) / (v1 - from);
          return { siemens: slope, amps0: start - slope * from };
        });
        lights.push({ bend: at, lines, perSecond: oneCircle * part.poleHz });
        limited.push({
          ...ends(ref, part.transistor),
          zeroV: 0,
          ohms: part.saturationOhms,
          drive: { by: 'light', light: lights.length - 1 },
        });
        conduct(ref, part.transistor, OFF_SIEMENS);
        break;
      }
      case 'dcSource':
        sources.push({ ...ends(part.ref, part.pins), ohms: part.ohms, constant: part.volts, sine: 0, cosine: 0 });
        break;
      case 'mains': {
        const crest = Math.SQRT2 * part.rmsV;
        const phase = (part.phaseDeg / 360) * oneCircle;
        radPerSecond = oneCircle * part.hertz;
        sources.push({
          ...ends(part.ref, part.pins),
          ohms: part.ohms,
          constant: 0,
          sine: crest * Math.cos(phase),
          cosine: crest * Math.sin(phase),
        });
        break;
      }
      case 'load':
        if ('ohms' in part.draw) conduct(part.ref, part.pins, 1 / part.draw.ohms);
        else bend(part.ref, part.pins, [sinkCurve(part.draw.amps, part.draw.fromV)]);
        break;
      case 'bodyNetwork':
        for (const one of bodyNetworkParts(part)) add(one);
        break;
      case 'controller':
        addController(part);
        break;
    }
  };
  for (const part of circuit.parts) add(part);

  const branches = { nodeOf, nodes: nodeOf.size - 1, conductances, charges, sources, cores, bends, limited, lights, heated, radPerSecond };
  return { ...branches, islandOf: findIslands(branches), states: layStates(branches) };
}

/** Numbers the islands of nodes that branches connect; earth's is 0. Windings connect their own pins only. */
function findIslands({ nodes, conductances, charges, sources, bends, limited }: Omit<Plan, 'states' | 'islandOf'>): number[] {
  const parent = Array.from({ length: nodes + 1 }, (_, index) => index);
  const rootOf = (index: number): number => (parent[index] === index ? index : rootOf(parent[index]!));
  for (const { a, b } of [conductances, charges, sources, bends, limited].flat()) {
    const [one, other] = [rootOf(a + 1), rootOf(b + 1)];
    parent[Math.max(one, other)] = Math.min(one, other);
  }
  return Array.from({ length: nodes }, (_, index) => rootOf(index + 1));
}
