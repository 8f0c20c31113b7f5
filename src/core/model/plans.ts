import type { CampaignPlan } from '../solver/campaign.ts';
import type { Circuit, Part } from '../solver/circuit.ts';
import type { PointPlan } from '../solver/operating-point.ts';
import type { Facts } from '../working/facts.ts';
import { mainsOf } from './choices.ts';
import { drawOf, type Level, LOAD_REF, type LoadChoice, type MainsChoice, type Model, type NoModel } from './model.ts';
import { type Look, looksOf } from './probes-of.ts';
import { toModel } from './to-model.ts';

/** Longest simulated before a point counts as not settled, and after a fault, seconds. House choices within what the campaign allows (300 ms). */
const POINT_MOST_S = 0.2;
const FAULT_MOST_S = 0.15;
const MOST = { steps: 2e7, topologies: 3000 } as const;
const POINTS = 240;
/** Periods of switching in a close look, and how long it is where nobody named a frequency. */
const PERIODS = 4;
const USUAL_CLOSE_S = 50e-6;

/** An operating point by name: mains and load. */
export interface PointChoice {
  readonly id: string;
  readonly mains: 'nominal' | 'high' | 'low';
  readonly load: LoadChoice;
}
export const POINTS_RUN: readonly PointChoice[] = [
  { id: 'nominal-none', mains: 'nominal', load: 'none' },
  { id: 'nominal-standby', mains: 'nominal', load: 'standby' },
  { id: 'nominal-half', mains: 'nominal', load: 0.5 },
  { id: 'nominal-full', mains: 'nominal', load: 1 },
  { id: 'nominal-over', mains: 'nominal', load: 1.2 },
  { id: 'nominal-far-over', mains: 'nominal', load: 1.5 },
  { id: 'high-full', mains: 'high', load: 1 },
  { id: 'low-full', mains: 'low', load: 1 },
];
export const FAULT_LOADS: readonly { readonly name: 'none' | 'standby' | 'full'; readonly load: LoadChoice }[] = [
  { name: 'none', load: 'none' },
  { name: 'standby', load: 'standby' },
  { name: 'full', load: 1 },
];

export function withLoad(circuit: Circuit, level: Level, load: LoadChoice): Circuit {
  const draw = drawOf(level, load);
  return { ...circuit, parts: circuit.parts.map((part) => (part.ref === LOAD_REF && part.kind === 'load' ? { ...part, draw } : part)) };
}

export interface PlannedPoint {
  readonly choice: PointChoice;
  readonly mains: MainsChoice;
  readonly looks: readonly Look[];
  readonly plan: PointPlan;
}
export interface SimulationPlan {
  readonly model: Model;
  readonly points: readonly PlannedPoint[];
}

/** Every point of a level; the model of the first stands for all, they differ in the mains alone. */
export function planPoints(facts: Facts, level: Level): SimulationPlan | NoModel {
  const mains = mainsOf(facts);
  const models = new Map<string, Model>();
  for (const which of ['nominal', 'high', 'low'] as const) {
    const model = toModel(facts, level, mains[which]);
    if ('because' in model) return model;
    models.set(which, model);
  }
  return {
    model: models.get('nominal')!,
    points: POINTS_RUN.map((choice) => planPoint(models.get(choice.mains)!, choice, mains[choice.mains])),
  };
}

export function planPoint(model: Model, choice: PointChoice, mains: MainsChoice): PlannedPoint {
  const looks = looksOf(model);
  const controller = model.circuit.parts.find((part) => part.kind === 'controller');
  const law = controller?.kind === 'controller' ? controller.law : null;
  const hertz = law?.type === 'peakCurrent' ? law.hertz : law?.type === 'primarySide' ? law.hertzMost : null;
  return {
    choice,
    mains,
    looks,
    plan: {
      circuit: withLoad(model.circuit, model.level, choice.load),
      start: 'given',
      probes: looks.map(({ probe }) => probe),
      source: model.source,
      nominalV: model.level.volts,
      windowS: model.windowS,
      mostS: POINT_MOST_S,
      most: MOST,
      points: POINTS,
      closeS: hertz === null ? USUAL_CLOSE_S : PERIODS / hertz,
    },
  };
}

/** Faults at the highest mains of the market, each at three loads. `harmV`: above it what hangs on the output may be harmed. */
export function planFaults(facts: Facts, level: Level, harmV: number): { model: Model; mains: MainsChoice; plan: CampaignPlan } | NoModel {
  const mains = mainsOf(facts).high;
  const model = toModel(facts, level, mains);
  if ('because' in model) return model;
  return {
    model,
    mains,
    plan: {
      circuit: model.circuit,
      load: model.load,
      loads: FAULT_LOADS.map(({ name, load }) => ({ name, draw: drawOf(level, load) })),
      source: model.source,
      nominalV: level.volts,
      harmV,
      body: model.body,
      windowS: model.windowS,
      mostS: FAULT_MOST_S,
      most: MOST,
    },
  };
}

/** The circuit without the ratings that it exceeds already while healthy: a run would end at once, and the fault would not be seen. */
export function tolerating(circuit: Circuit, refs: ReadonlySet<string>): Circuit {
  return { ...circuit, parts: circuit.parts.map((part) => (refs.has(part.ref) ? tolerated(part) : part)) };
}

function tolerated(part: Part): Part {
  if (part.kind === 'capacitor') {
    const { ratedV: _none, ...rest } = part;
    return rest;
  }
  return 'breakdown' in part && part.breakdown !== undefined ? { ...part, breakdown: { ...part.breakdown, intended: true } } : part;
}
