import type { Circuit } from './circuit.ts';
import { controlOf } from './controller/control-of.ts';
import type { ControlUnit, ControlWatch } from './controller/control-unit.ts';
import { rowTimes } from './dense.ts';
import type { Plan, Sense } from './plan.ts';
import { FIRES_ABOVE, firedBy } from './settle.ts';
import type { Topology } from './topology.ts';
import type { Watch } from './watch.ts';

/** The controllers of a circuit, with their pins wired to the rows of a topology. */
export class ControlBoard {
  readonly units: readonly ControlUnit[];
  readonly senses: readonly Sense[];
  readonly #from: number[];
  readonly #wired: readonly { readonly unit: ControlUnit; readonly gate: number; readonly supply: number }[];

  constructor(circuit: Circuit, plan: Plan) {
    const node = (net: string): number => plan.nodeOf.get(net)!;
    this.units = circuit.parts.flatMap((part) => (part.kind === 'controller' ? [controlOf(part, node)] : []));
    this.senses = this.units.flatMap((unit) => unit.senses);
    this.#from = [];
    const bendOf = (name: string): number => plan.bends.findIndex(({ ref }) => ref === name);
    this.#wired = this.units.map((unit) => ({ unit, gate: bendOf(unit.drives), supply: bendOf(unit.ref) }));
  }

  /** Says in which row of a topology the first sense stands. */
  place(firstRow: number): void {
    let next = firstRow;
    for (const unit of this.units) {
      this.#from.push(next);
      next += unit.senses.length;
    }
  }

  /** Next time a controller wants to be woken, ticks. */
  due(): number {
    let next = Number.POSITIVE_INFINITY;
    for (const unit of this.units) next = Math.min(next, unit.due());
    return next;
  }

  watches(): Watch[] {
    return this.units.flatMap((unit, index) => unit.watches().map((watch) => this.#placed(watch, index)));
  }

  /** Wakes whoever is due or has seen what it watches for; says whether anybody was. */
  wake(tick: number, topology: Topology, x: Float64Array, n: number): boolean {
    let woken = false;
    this.units.forEach((unit, index) => {
      const wants = (): boolean => unit.watches().some((watch) => firedBy(topology, x, n, this.#placed(watch, index)) > FIRES_ABOVE);
      if (unit.due() > tick && !wants()) return;
      woken = true;
      unit.wake(tick, (sense) => rowTimes(topology.rows, this.#from[index]! + sense, x, n));
    });
    return woken;
  }

  /** Modes that the controllers want their switches and supply currents in. */
  modes(): { readonly bend: number; readonly mode: number }[] {
    return this.#wired.flatMap(({ unit, gate, supply }) => [
      { bend: gate, mode: unit.on ? 1 : 0 },
      { bend: supply, mode: unit.running ? 1 : 0 },
    ]);
  }

  #placed({ sense, sign, offset, also }: ControlWatch, unit: number): Watch {
    const from = this.#from[unit]!;
    const base = { row: from + sense, sign, offset, device: -1, to: 0 };
    return also === undefined ? base : { ...base, also: { row: from + also.sense, sign: also.sign, offset: also.offset } };
  }
}
