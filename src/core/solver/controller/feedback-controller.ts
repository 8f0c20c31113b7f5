import type { Controller, PeakCurrentLaw, ValleyLaw } from '../circuit.ts';
import type { Sense } from '../plan.ts';
import { TICK_S } from '../topology.ts';
import { above, below, type ControlCounts, type ControlState, type ControlUnit, type ControlWatch, timeOf } from './control-unit.ts';
import { asleep, followSupply, type LockoutState, lockoutWatches, trip } from './supply-lockout.ts';

/** Numbers of the pins among the senses. */
export const PIN = { current: 0, excess: 1, feedback: 2, supply: 3, auxiliary: 4 } as const;
export const ticks = (seconds: number): number => Math.round(seconds / TICK_S);

/** When the switch turns on: what distinguishes one law from another. */
export interface TurnOn {
  watches(): readonly ControlWatch[];
  due(): number;
  /** Whether to turn on now. */
  ready(tick: number, read: (sense: number) => number): boolean;
  turnedOff(tick: number): void;
  resumed(tick: number): void;
  save(): ControlState;
  load(state: ControlState): void;
}

/** Longest a pulse may last, in ticks. */
const onMost = (law: PeakCurrentLaw | ValleyLaw): number => ticks(law.type === 'peakCurrent' ? law.dutyMost / law.hertz : law.onMostS);

/**
 * Current-mode control with a feedback pin: a pulse ends when the sensed current reaches what the pin asks, the limit, or the longest time.
 * Leading-edge blanking, delay to the switch, burst, soft start, overload timer, supply lock-out.
 */
export class FeedbackController implements ControlUnit {
  readonly ref: string;
  readonly drives: string;
  readonly senses: readonly Sense[];
  readonly counts: ControlCounts = { pulses: 0, limited: 0, starts: 0, bursts: 0, latched: false };
  readonly #law: PeakCurrentLaw | ValleyLaw;
  readonly #part: Controller;
  readonly #turnOn: TurnOn;
  readonly #lockout: LockoutState = asleep();
  #on = false;
  #blankUntil = 0;
  #endAt = Number.POSITIVE_INFINITY;
  /** A decided turn-off on its way through the driver. */
  #offAt = Number.POSITIVE_INFINITY;
  #bursting = false;
  #overloadAt = Number.POSITIVE_INFINITY;
  #softFrom = 0;
  #limitV: number;

  constructor(part: Controller, law: PeakCurrentLaw | ValleyLaw, node: (net: string) => number, turnOn: TurnOn) {
    this.ref = part.ref;
    this.drives = part.drives;
    this.#part = part;
    this.#law = law;
    this.#turnOn = turnOn;
    this.#limitV = law.limitV;
    const ground = node(part.ground);
    const pin = (net: string, factor = 1) => ({ factor, plus: node(net), minus: ground });
    this.senses = [
      { terms: [pin(law.sense)], constant: 0 },
      // sensed current above what the feedback asks
      { terms: [pin(law.sense), pin(law.feedback, -1 / law.divider)], constant: law.offsetV / law.divider },
      { terms: [pin(law.feedback)], constant: 0 },
      { terms: [pin(part.supply)], constant: 0 },
      ...(law.type === 'valley' ? [{ terms: [pin(law.auxiliary)], constant: 0 }] : []),
    ];
  }

  get on(): boolean {
    return this.#on;
  }
  get running(): boolean {
    return this.#lockout.running;
  }

  watches(): readonly ControlWatch[] {
    const { lockout } = this.#part;
    const law = this.#law;
    const out = lockoutWatches(lockout, this.#lockout, PIN.supply);
    if (!this.#lockout.running) return out;
    if (law.overload !== undefined)
      out.push(
        this.#overloadAt === Number.POSITIVE_INFINITY ? above(PIN.feedback, law.overload.volts) : below(PIN.feedback, law.overload.volts),
      );
    if (this.#on) {
      if (this.#offAt === Number.POSITIVE_INFINITY && this.#blankUntil < 0)
        out.push(above(PIN.current, this.#limitV), { ...above(PIN.excess, 0), also: above(PIN.current, law.leastV) });
      return out;
    }
    if (this.#bursting) out.push(above(PIN.feedback, law.burst.goV));
    else out.push(...this.#turnOn.watches());
    return out;
  }

  due(): number {
    if (!this.#lockout.running) return Number.POSITIVE_INFINITY;
    const inPulse = this.#on
      ? Math.min(this.#endAt, this.#offAt, this.#blankUntil < 0 ? Number.POSITIVE_INFINITY : this.#blankUntil)
      : Number.POSITIVE_INFINITY;
    const next = this.#on || this.#bursting ? Number.POSITIVE_INFINITY : this.#turnOn.due();
    return Math.min(inPulse, next, this.#overloadAt);
  }

  wake(tick: number, read: (sense: number) => number): void {
    const change = followSupply(this.#part.lockout, this.#lockout, read(PIN.supply));
    this.counts.starts = this.#lockout.starts;
    this.counts.latched = this.#lockout.latched;
    if (change === 'started') {
      this.#softFrom = tick;
      this.#bursting = false;
      this.#overloadAt = Number.POSITIVE_INFINITY;
      this.#turnOn.resumed(tick);
    }
    if (!this.#lockout.running) {
      this.#on = false;
      return;
    }
    this.#followOverload(tick, read(PIN.feedback));
    if (this.#on) this.#endPulse(tick, read);
    else this.#beginPulse(tick, read);
  }

  #followOverload(tick: number, feedback: number): void {
    const { overload } = this.#law;
    if (overload === undefined) return;
    if (tick >= this.#overloadAt) {
      trip(this.#lockout, overload.after);
      this.counts.latched = this.#lockout.latched;
      this.#overloadAt = Number.POSITIVE_INFINITY;
      this.#on = false;
    } else if (feedback > overload.volts) this.#overloadAt = Math.min(this.#overloadAt, tick + ticks(overload.seconds));
    else this.#overloadAt = Number.POSITIVE_INFINITY;
  }

  #endPulse(tick: number, read: (sense: number) => number): void {
    if (tick >= this.#endAt || tick >= this.#offAt) {
      this.#on = false;
      this.#turnOn.turnedOff(tick);
      return;
    }
    if (this.#blankUntil >= 0 && tick >= this.#blankUntil) this.#blankUntil = -1;
    if (this.#blankUntil >= 0 || this.#offAt < Number.POSITIVE_INFINITY) return;
    const current = read(PIN.current);
    const limited = current >= this.#limitV;
    if (!limited && !(read(PIN.excess) >= 0 && current >= this.#law.leastV)) return;
    if (limited) this.counts.limited += 1;
    this.#offAt = tick + ticks(this.#law.delayS);
    if (this.#offAt <= tick) this.#endPulse(tick, read);
  }

  #beginPulse(tick: number, read: (sense: number) => number): void {
    if (!this.#lockout.running) return;
    const { burst, softStartS, limitV, leastV, blankS } = this.#law;
    const feedback = read(PIN.feedback);
    if (this.#bursting) {
      if (feedback < burst.goV) return;
      this.#bursting = false;
      this.counts.bursts += 1;
      this.#turnOn.resumed(tick);
    }
    if (!this.#turnOn.ready(tick, read)) return;
    if (feedback < burst.stopV) {
      this.#bursting = true;
      return;
    }
    const grown = softStartS === undefined ? 1 : Math.min(1, ((tick - this.#softFrom) * TICK_S) / softStartS);
    this.#limitV = Math.max(leastV, grown * limitV);
    this.#on = true;
    this.counts.pulses += 1;
    this.#blankUntil = tick + ticks(blankS);
    this.#endAt = tick + onMost(this.#law);
    this.#offAt = Number.POSITIVE_INFINITY;
  }

  save(): ControlState {
    return {
      ...this.#turnOn.save(),
      ...this.#lockout,
      on: this.#on,
      blankUntil: this.#blankUntil,
      endAt: this.#endAt,
      offAt: this.#offAt,
      bursting: this.#bursting,
      overloadAt: this.#overloadAt,
      softFrom: this.#softFrom,
      limitV: this.#limitV,
    };
  }

  load(state: ControlState): void {
    const number = (key: string): number => timeOf(state, key);
    this.#turnOn.load(state);
    Object.assign(this.#lockout, {
      running: state['running'],
      latched: state['latched'],
      mustFall: state['mustFall'],
      starts: state['starts'],
    });
    this.#on = state['on'] as boolean;
    this.#blankUntil = number('blankUntil');
    this.#endAt = number('endAt');
    this.#offAt = number('offAt');
    this.#bursting = state['bursting'] as boolean;
    this.#overloadAt = number('overloadAt');
    this.#softFrom = number('softFrom');
    this.#limitV = number('limitV');
  }
}
