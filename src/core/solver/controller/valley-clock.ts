import type { ValleyLaw } from '../circuit.ts';
import { above, below, type ControlState, type ControlWatch, timeOf } from './control-unit.ts';
import { PIN, type TurnOn, ticks } from './feedback-controller.ts';

/**
 * Turns on in a valley: after the least off-time the auxiliary voltage is awaited positive, then falling through zero, then a quarter of
 * the ring. Without a ring it turns on after the longest off-time.
 */
export class ValleyClock implements TurnOn {
  readonly #law: ValleyLaw;
  #armAt = 0;
  #latest = 0;
  #seenHigh = false;
  #onAt = Number.POSITIVE_INFINITY;
  #armed = false;

  constructor(law: ValleyLaw) {
    this.#law = law;
  }
  watches(): readonly ControlWatch[] {
    if (!this.#armed || this.#onAt < Number.POSITIVE_INFINITY) return [];
    return [this.#seenHigh ? below(PIN.auxiliary, 0) : above(PIN.auxiliary, 0)];
  }
  due(): number {
    return Math.min(this.#onAt, this.#latest, this.#armed ? Number.POSITIVE_INFINITY : this.#armAt);
  }
  ready(tick: number, read: (sense: number) => number): boolean {
    if (tick >= this.#onAt || tick >= this.#latest) {
      // kept until a pulse has begun and ended: what burst puts off is due at once afterwards
      this.#onAt = Math.min(this.#onAt, tick);
      return true;
    }
    if (!this.#armed) {
      if (tick < this.#armAt) return false;
      this.#armed = true;
    }
    const volts = read(PIN.auxiliary);
    if (!this.#seenHigh) this.#seenHigh = volts > 0;
    else if (volts <= 0 && this.#onAt === Number.POSITIVE_INFINITY) this.#onAt = tick + ticks(this.#law.valleyDelayS);
    return false;
  }
  turnedOff(tick: number): void {
    this.#armAt = tick + ticks(this.#law.offLeastS);
    this.#latest = tick + ticks(this.#law.offMostS);
    this.#armed = false;
    this.#seenHigh = false;
    this.#onAt = Number.POSITIVE_INFINITY;
  }
  resumed(tick: number): void {
    this.#onAt = tick;
  }
  save(): ControlState {
    return { armAt: this.#armAt, latest: this.#latest, seenHigh: this.#seenHigh, onAt: this.#onAt, armed: this.#armed };
  }
  load(state: ControlState): void {
    this.#armAt = state['armAt'] as number;
    this.#latest = state['latest'] as number;
    this.#seenHigh = state['seenHigh'] as boolean;
    this.#onAt = timeOf(state, 'onAt');
    this.#armed = state['armed'] as boolean;
  }
}
