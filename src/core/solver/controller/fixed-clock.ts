import { TICK_S } from '../topology.ts';
import type { ControlState } from './control-unit.ts';
import type { TurnOn } from './feedback-controller.ts';

/** First edge of the clock, ticks: time for the circuit to find its state. House choice, 1 µs. */
const FIRST = Math.round(1e-6 / TICK_S);

/** A fixed frequency: the switch turns on at each edge that finds it off. Edges are counted, so that they do not drift. */
export class FixedClock implements TurnOn {
  readonly #period: number;
  #edge = 0;

  constructor(hertz: number) {
    this.#period = 1 / (hertz * TICK_S);
  }
  watches(): readonly never[] {
    return [];
  }
  due(): number {
    return FIRST + Math.round(this.#edge * this.#period);
  }
  ready(tick: number): boolean {
    if (tick < this.due()) return false;
    this.resumed(tick + 1);
    return true;
  }
  turnedOff(tick: number): void {
    this.resumed(tick);
  }
  /** The next edge not before a time. */
  resumed(tick: number): void {
    this.#edge = Math.max(0, Math.ceil((tick - FIRST - 0.5) / this.#period));
  }
  save(): ControlState {
    return { edge: this.#edge };
  }
  load(state: ControlState): void {
    this.#edge = state['edge'] as number;
  }
}
