import type { Controller, PrimarySideLaw } from '../circuit.ts';
import type { Sense } from '../plan.ts';
import { above, below, type ControlCounts, type ControlState, type ControlUnit, type ControlWatch } from './control-unit.ts';
import { ticks } from './feedback-controller.ts';
import { asleep, followSupply, type LockoutState, lockoutWatches } from './supply-lockout.ts';

const PIN = { current: 0, supply: 1, auxiliary: 2 } as const;
const NEVER = Number.POSITIVE_INFINITY;

/** What a unit remembers between pulses; plain data. */
interface Memory {
  on: boolean;
  blankUntil: number;
  endAt: number;
  offAt: number;
  /** The secondary conducts: from turn-off until the auxiliary voltage falls below zero. */
  conducting: boolean;
  turnedOffAt: number;
  sampleAt: number;
  conductedFor: number;
  turnedOnAt: number;
  nextOnAt: number;
  /** Time from one turn-on to the next that the last sample asked for. */
  period: number;
  integral: number;
  thresholdV: number;
}

/**
 * Regulation from the primary side: the auxiliary voltage is sampled near the knee, where the secondary current ends; the error moves
 * first the peak current, then the frequency; the output current is limited by the share of the period in which the secondary conducts.
 */
export class PrimarySideController implements ControlUnit {
  readonly ref: string;
  readonly drives: string;
  readonly senses: readonly Sense[];
  readonly counts: ControlCounts = { pulses: 0, limited: 0, starts: 0, bursts: 0, latched: false };
  readonly #part: Controller;
  readonly #law: PrimarySideLaw;
  readonly #lockout: LockoutState = asleep();
  readonly #now: Memory;

  constructor(part: Controller, law: PrimarySideLaw, node: (net: string) => number) {
    this.ref = part.ref;
    this.drives = part.drives;
    this.#part = part;
    this.#law = law;
    const ground = node(part.ground);
    this.senses = [law.sense, part.supply, law.auxiliary].map((net) => ({
      terms: [{ factor: 1, plus: node(net), minus: ground }],
      constant: 0,
    }));
    this.#now = {
      on: false,
      blankUntil: -1,
      endAt: NEVER,
      offAt: NEVER,
      conducting: false,
      turnedOffAt: 0,
      sampleAt: NEVER,
      conductedFor: ticks(law.onMostS),
      turnedOnAt: 0,
      nextOnAt: NEVER,
      period: ticks(1 / law.hertzMost),
      integral: 0,
      thresholdV: law.limitV,
    };
  }

  get on(): boolean {
    return this.#now.on;
  }
  get running(): boolean {
    return this.#lockout.running;
  }

  watches(): readonly ControlWatch[] {
    const { on, blankUntil, offAt, conducting, thresholdV } = this.#now;
    const out = lockoutWatches(this.#part.lockout, this.#lockout, PIN.supply);
    if (!this.#lockout.running) return out;
    if (on && blankUntil < 0 && offAt === NEVER) out.push(above(PIN.current, thresholdV));
    if (conducting && blankUntil < 0) out.push(below(PIN.auxiliary, 0));
    return out;
  }

  due(): number {
    if (!this.#lockout.running) return NEVER;
    const { on, blankUntil, endAt, offAt, sampleAt, nextOnAt } = this.#now;
    return Math.min(blankUntil < 0 ? NEVER : blankUntil, ...(on ? [endAt, offAt] : [sampleAt, nextOnAt]));
  }

  wake(tick: number, read: (sense: number) => number): void {
    const now = this.#now;
    const change = followSupply(this.#part.lockout, this.#lockout, read(PIN.supply));
    this.counts.starts = this.#lockout.starts;
    this.counts.latched = this.#lockout.latched;
    if (change === 'started') now.nextOnAt = tick;
    if (!this.#lockout.running) {
      now.on = false;
      now.conducting = false;
      return;
    }
    if (now.blankUntil >= 0 && tick >= now.blankUntil) now.blankUntil = -1;
    if (now.on) this.#endPulse(tick, read);
    if (now.on) return;
    if (tick >= now.sampleAt) this.#learn(read(PIN.auxiliary));
    if (now.conducting && now.blankUntil < 0 && read(PIN.auxiliary) <= 0) this.#conducted(tick);
    if (tick >= now.nextOnAt) this.#beginPulse(tick);
  }

  #endPulse(tick: number, read: (sense: number) => number): void {
    const now = this.#now;
    if (tick < now.endAt && tick < now.offAt) {
      if (now.blankUntil >= 0 || now.offAt < NEVER || read(PIN.current) < now.thresholdV) return;
      if (now.thresholdV >= this.#law.limitV) this.counts.limited += 1;
      now.offAt = tick + ticks(this.#law.delayS);
      if (now.offAt > tick) return;
    }
    now.on = false;
    now.conducting = true;
    now.turnedOffAt = tick;
    // the auxiliary voltage needs the blanking time to rise
    now.blankUntil = tick + ticks(this.#law.blankS);
    now.sampleAt = tick + Math.max(ticks(this.#law.blankS), Math.round(this.#law.sampleAt * now.conductedFor));
    // should the end of conduction never be seen
    now.nextOnAt = tick + ticks(1 / this.#law.hertzLeast);
  }

  /** One sample of the output voltage moves the demand. */
  #learn(volts: number): void {
    const now = this.#now;
    const { kneeV, stepPerV } = this.#law;
    now.sampleAt = NEVER;
    now.integral = clampShare(now.integral + stepPerV * (kneeV - volts));
    this.#demand(kneeV - volts);
  }

  #demand(errorV: number): void {
    const now = this.#now;
    const { gainPerV, leastShare, limitV, hertzMost, hertzLeast } = this.#law;
    const demand = clampShare(now.integral + gainPerV * errorV);
    // upper half: current at the highest frequency; lower half: frequency at the smallest current
    const upper = Math.max(0, 2 * demand - 1);
    const lower = Math.min(1, 2 * demand);
    now.thresholdV = limitV * (leastShare + (1 - leastShare) * upper);
    const hertz = hertzLeast * Math.exp(lower * Math.log(hertzMost / hertzLeast));
    now.period = ticks(1 / hertz);
  }

  #conducted(tick: number): void {
    const now = this.#now;
    now.conducting = false;
    now.conductedFor = tick - now.turnedOffAt;
    // a conduction shorter than expected was over before its sample: the next one comes earlier
    now.sampleAt = NEVER;
    now.nextOnAt = now.turnedOnAt + Math.max(now.period, Math.round(now.conductedFor / this.#law.conductionMost));
  }

  #beginPulse(tick: number): void {
    const now = this.#now;
    now.on = true;
    now.conducting = false;
    now.turnedOnAt = tick;
    now.blankUntil = tick + ticks(this.#law.blankS);
    now.endAt = tick + ticks(this.#law.onMostS);
    now.offAt = NEVER;
    now.sampleAt = NEVER;
    this.counts.pulses += 1;
  }

  save(): ControlState {
    return { ...this.#now, ...this.#lockout };
  }
  load(state: ControlState): void {
    // what a state does not name stays as it is at the start
    for (const memory of [this.#now, this.#lockout])
      for (const key of Object.keys(memory)) if (state[key] !== undefined) Object.assign(memory, { [key]: state[key] ?? NEVER });
  }
}

const clampShare = (value: number): number => Math.min(1, Math.max(0, value));
