import { type Refusal, refuse } from '../quantity/refusal.ts';
import type { Circuit, Load } from './circuit.ts';
import { applyFault, type Fault, faultId } from './fault.ts';
import type { Outcome, ProbeResult, RunFinding, Snapshot, SolverRequest, SolverResult } from './request.ts';
import { Run } from './run.ts';
import { toResult } from './simulate.ts';
import { TICK_S } from './topology.ts';
import { validateRequest } from './validate-request.ts';

/** A campaign: one circuit, its faults, each at several loads. Plain data, so that it can be handed to a worker. */
export interface CampaignPlan {
  readonly circuit: Circuit;
  /** The load part whose draw is changed, and what it is changed to. */
  readonly load: string;
  readonly loads: readonly { readonly name: string; readonly draw: Load['draw'] }[];
  /** Source whose power is reported. */
  readonly source: string;
  readonly nominalV: number;
  /** Output voltage above which what hangs on it may be harmed. */
  readonly harmV: number;
  /** Body network between output and earth, where there is one. */
  readonly body: string | null;
  /** Length of the first looks; whole periods of the mains where there is mains. Later ones are twice and four times as long. */
  readonly windowS: number;
  /** Longest time simulated after a fault, and before it to settle; never more than 300 ms. */
  readonly mostS: number;
  readonly most: SolverRequest['most'];
}
export interface CampaignJob {
  readonly load: string;
  readonly fault: Fault;
}
export type FaultState = 'regulates' | 'limits' | 'hiccups' | 'dead' | 'runaway' | 'ratingExceeded' | 'stillMoving' | 'noResult';
export interface FaultResult {
  readonly id: string;
  readonly load: string;
  readonly state: FaultState;
  /** Why the run ended; only a completed one has settled numbers. */
  readonly outcome: Outcome;
  readonly simulatedS: number;
  /** Highest output voltage since the fault. */
  readonly outputMostV: number | null;
  readonly aboveHarmS: number;
  /** Largest touch current of a whole look, rms: also where nothing settled. Null without a body network or a whole look. */
  readonly touchRmsA: number | null;
  /** Of the last look; null unless the circuit had settled. */
  readonly settled: {
    readonly outputV: number;
    readonly inputW: number;
    readonly touchRmsA: number | null;
    readonly lossW: Readonly<Record<string, number>>;
  } | null;
  /** Change of the output per second at the end of a run that still moved, volts. */
  readonly slopeVPerS: number | null;
  /**
   * Where such a motion ends when it goes on dying as it did between the last three looks, volts; null where it does not die, and for a run
   * that settled or was ended.
   */
  readonly boundV: number | null;
  /** Nothing switched during the last look, though the output still has a voltage. */
  readonly rests: boolean;
  /** With times since the fault. */
  readonly findings: readonly RunFinding[];
  readonly balanced: boolean;
}

/** Two looks are alike when means differ by less than this share of the nominal voltage, and powers by less than this share. House choices. */
const ALIKE = { volts: 0.002, watts: 0.02 } as const;
const LEAST_W = 0.01; // below ten milliwatt powers are alike
/** Regulation is kept within this share; beyond it upward is runaway; below this share of the nominal output is dead. House choices. */
const KEPT = 0.05;
const RUNAWAY = 1.1;
const DEAD = 0.1;
/** What has not settled after this time is still moving, seconds. House choice. */
const LONGEST_LOOK_S = 0.3;
/** Starts in the run after which a unit is said to hiccup. */
const HICCUPS = 2;

function requestOf(plan: CampaignPlan, circuit: Circuit, start: SolverRequest['start'], cancelled?: () => boolean): SolverRequest {
  const load = circuit.parts.find((part): part is Load => part.kind === 'load' && part.ref === plan.load);
  return {
    circuit,
    start,
    stopS: plan.windowS,
    fromS: 0,
    probes: [
      { id: 'out', of: { volts: load?.pins ?? ['', ''] } },
      ...(plan.body === null ? [] : [{ id: 'touch', of: { touchOf: plan.body } } as const]),
    ],
    accuracy: 'screening',
    most: plan.most,
    endAtRating: true,
    above: { probe: 'out', level: plan.harmV },
    ...(cancelled === undefined ? {} : { cancelled }),
  };
}

const withLoad = (plan: CampaignPlan, name: string): Circuit => {
  const draw = plan.loads.find((one) => one.name === name)?.draw;
  if (draw === undefined) throw new Error(`the campaign has no load ${name}`);
  return {
    ...plan.circuit,
    parts: plan.circuit.parts.map((part) => (part.ref === plan.load && part.kind === 'load' ? { ...part, draw } : part)),
  };
};

/** Looks of one length before the length doubles: bursts far apart are alike only over several of them. House choices. */
const SAME_LENGTH = 6;
const LONGEST_LOOK = 4;
const LEAST_LOOKS = 2;
const lengthOf = (plan: CampaignPlan, index: number): number => plan.windowS * Math.min(LONGEST_LOOK, 1 << Math.floor(index / SAME_LENGTH));

/** What a look of some length says: mean output and input power. */
interface Look {
  readonly seconds: number;
  readonly result: SolverResult;
  readonly out: ProbeResult | null;
}

function alike(plan: CampaignPlan, one: Look, other: Look): boolean {
  if (one.out === null || other.out === null) return one.out === other.out;
  const [w0, w1] = [one.result.sourceW[plan.source] ?? 0, other.result.sourceW[plan.source] ?? 0];
  return (
    Math.abs(one.out.mean - other.out.mean) < ALIKE.volts * plan.nominalV &&
    Math.abs(one.out.most - other.out.most) < ALIKE.watts * plan.nominalV &&
    Math.abs(w0 - w1) < ALIKE.watts * Math.max(w0, w1) + LEAST_W
  );
}

/**
 * What flows in flows out again: the stores of a settled circuit hold at the end of a look what they held at its start. A bulk capacitor that
 * nobody fills any more keeps the output where it was for a tenth of a second.
 */
function steady({ seconds, result: { energy } }: Look): boolean {
  const through = Math.max(Math.abs(energy.deliveredJ), Math.abs(energy.dissipatedJ));
  return Math.abs(energy.storedJ) < ALIKE.watts * through + LEAST_W * seconds;
}

const pulsesOf = ({ result }: Look): number => Object.values(result.controllers).reduce((sum, { pulses }) => sum + pulses, 0);

/** There is an output, and no controller has made a pulse since the look before: a converter that rests, or one that will never wake. */
function rests(plan: CampaignPlan, before: Look, last: Look): boolean {
  const isControlled = Object.keys(last.result.controllers).length > 0;
  return isControlled && last.out !== null && last.out.mean >= DEAD * plan.nominalV && pulsesOf(last) === pulsesOf(before);
}

function settles(plan: CampaignPlan, first: Look, second: Look, third: Look): boolean {
  if (!alike(plan, first, second) || !alike(plan, second, third)) return false;
  // without an output there is nothing that a store could keep up; a supply that starts and stops goes on below it
  if (third.out !== null && third.out.mean < DEAD * plan.nominalV) return true;
  return steady(second) && steady(third) && !rests(plan, first, second) && !rests(plan, second, third);
}

interface Looks {
  readonly looks: Look[];
  readonly outcome: Outcome;
  readonly settled: boolean;
  readonly aboveS: number;
}

/** Looks on until three looks in a row are alike and nothing is used up, the run ends by itself, or the time is over. */
function lookOn(plan: CampaignPlan, request: SolverRequest): Looks {
  const run = new Run(request);
  try {
    return lookAtRun(plan, request, run);
  } finally {
    run.release();
  }
}

function lookAtRun(plan: CampaignPlan, request: SolverRequest, run: Run): Looks {
  const looks: Look[] = [];
  let outcome: Outcome = 'completed';
  const mostS = Math.min(plan.mostS, LONGEST_LOOK_S);
  let goneS = 0;
  while (looks.length < LEAST_LOOKS || goneS + 0.5 * lengthOf(plan, looks.length) < mostS) {
    const begin = run.tick;
    const seconds = lengthOf(plan, looks.length);
    outcome = run.forward(seconds, 0);
    goneS += seconds;
    const result = toResult(request, run, outcome, begin);
    const probe = result.probes['out'];
    const look = { seconds, result, out: probe === undefined || 'because' in probe ? null : probe };
    looks.push(look);
    if (outcome !== 'completed') break;
    const [before, last] = [looks.at(-3), looks.at(-2)];
    if (before !== undefined && last !== undefined && settles(plan, before, last, look))
      return { looks, outcome, settled: true, aboveS: run.extremes.aboveS };
  }
  return { looks, outcome, settled: false, aboveS: run.extremes.aboveS };
}

/** The healthy circuit at a load, settled: where its faults begin. A refusal when it cannot be run or does not settle. */
export function settleHealthy(plan: CampaignPlan, load: string, cancelled?: () => boolean): Snapshot | readonly Refusal[] {
  const circuit = withLoad(plan, load);
  const request = requestOf(plan, circuit, 'given', cancelled);
  const refusals = validateRequest(request);
  if (refusals.length > 0) return refusals;
  const { looks, outcome } = lookOn(plan, request);
  const last = looks.at(-1)!.result;
  // a burst may never give two looks alike; what matters is that nothing ended it
  if (outcome !== 'completed') return [refuse('healthy-not-settled', outcome, 'a healthy circuit that runs', { place: `/loads/${load}` })];
  return last.end;
}

function stateOf(plan: CampaignPlan, looks: readonly Look[], outcome: Outcome, settled: boolean, startsBefore: number): FaultState {
  if (outcome === 'ratingExceeded') return 'ratingExceeded';
  if (outcome !== 'completed') return 'noResult';
  const { result, out } = looks.at(-1)!;
  const controllers = Object.values(result.controllers);
  if (controllers.reduce((sum, { starts }) => sum + starts, 0) - startsBefore >= HICCUPS) return 'hiccups';
  if (out === null) return 'noResult';
  if (out.mean > RUNAWAY * plan.nominalV && settled) return 'runaway';
  if (!settled) return 'stillMoving';
  if (out.mean < DEAD * plan.nominalV) return 'dead';
  return Math.abs(out.mean - plan.nominalV) <= KEPT * plan.nominalV ? 'regulates' : out.mean > plan.nominalV ? 'runaway' : 'limits';
}

/** Puts one fault into the settled circuit and looks what becomes of it. */
export function runFault(plan: CampaignPlan, job: CampaignJob, healthy: Snapshot, cancelled?: () => boolean): FaultResult {
  const request = requestOf(plan, applyFault(withLoad(plan, job.load), job.fault), healthy, cancelled);
  const refusals = validateRequest(request);
  if (refusals.length > 0) throw new Error(`a fault made an impossible circuit: ${JSON.stringify(refusals)}`);
  const { looks, outcome, settled, aboveS } = lookOn(plan, request);
  const last = looks.at(-1)!;
  const startsBefore = Object.values(healthy.controllers).reduce((sum, state) => sum + Number(state['starts'] ?? 0), 0);
  const state = stateOf(plan, looks, outcome, settled, startsBefore);
  const touches = looks.flatMap(({ result }) => {
    const one = result.outcome === 'completed' ? result.probes['touch'] : undefined;
    return one !== undefined && 'rms' in one ? [one.rms] : [];
  });
  const touch = last.result.probes['touch'];
  const tops = looks.flatMap(({ out }) => (out === null ? [] : [out.most]));
  const [before, after] = [looks.at(-2)?.out, last.out];
  return {
    id: faultId(job.fault),
    load: job.load,
    state,
    outcome,
    simulatedS: looks.reduce((sum, { result }) => sum + result.reachedS, 0),
    outputMostV: tops.length === 0 ? null : Math.max(...tops),
    aboveHarmS: aboveS,
    touchRmsA: touches.length === 0 ? null : Math.max(...touches),
    settled:
      settled && last.out !== null
        ? {
            outputV: last.out.mean,
            inputW: last.result.sourceW[plan.source] ?? 0,
            touchRmsA: touch !== undefined && 'rms' in touch ? touch.rms : null,
            lossW: last.result.lossW,
          }
        : null,
    slopeVPerS: !settled && before && after ? (after.mean - before.mean) / ((last.seconds + looks.at(-2)!.seconds) / 2) : null,
    boundV: state === 'stillMoving' ? endOfMotion(looks.slice(-3)) : null,
    rests: looks.length > 1 && outcome === 'completed' && rests(plan, looks.at(-2)!, last),
    // the snapshot's clock runs on: what happened is told from the fault on
    findings: last.result.findings.map((one) => ({ ...one, atS: one.atS - healthy.ticks * TICK_S })),
    balanced: looks.every(({ result }) => result.energy.balanced),
  };
}

/**
 * Where three values at equal distances in time lead when their differences keep falling in the same ratio: a geometric series (Aitken's
 * extrapolation, any text of numerical analysis). Null when they do not fall.
 */
function endOfMotion(looks: readonly Look[]): number | null {
  const [first, second, third] = looks.map(({ out }) => out?.mean);
  if (first === undefined || second === undefined || third === undefined) return null;
  if (looks.some(({ seconds }) => seconds !== looks[0]!.seconds)) return null;
  const ratio = (third - second) / (second - first);
  return ratio > 0 && ratio < 1 ? third + ((third - second) * ratio) / (1 - ratio) : null;
}

/** Order of badness of a state. */
const BADNESS: readonly FaultState[] = ['runaway', 'ratingExceeded', 'noResult', 'stillMoving', 'hiccups', 'limits', 'dead', 'regulates'];

/** For each fault the result at its worst load: where the output rises too far, the highest output; else the worst state. */
export function worstByFault(plan: CampaignPlan, results: readonly FaultResult[]): FaultResult[] {
  const worst = new Map<string, FaultResult>();
  for (const one of results) {
    const known = worst.get(one.id);
    if (known === undefined || isWorse(plan, one, known)) worst.set(one.id, one);
  }
  return [...worst.values()];
}

function isWorse(plan: CampaignPlan, one: FaultResult, other: FaultResult): boolean {
  const [top, otherTop] = [one.outputMostV ?? 0, other.outputMostV ?? 0];
  if (Math.max(top, otherTop) > RUNAWAY * plan.nominalV) return top > otherTop;
  return BADNESS.indexOf(one.state) < BADNESS.indexOf(other.state);
}
