import type { Circuit } from './circuit.ts';
import { controlOf } from './controller/control-of.ts';
import type { ControlUnit } from './controller/control-unit.ts';
import type { Plan, Sense } from './plan.ts';
import { COMPARATOR_SLACK } from './step-settings.ts';
import { addWatch, emptyTable, fired, type WatchTable } from './watch-table.ts';

interface Wired {
  readonly unit: ControlUnit;
  /** Place of its first sense among the values looked at. */
  readonly first: number;
  /** Bends of the switch it drives and of its supply; -1 where there is none. */
  readonly gate: number;
  readonly supply: number;
  /** What it watches for and when it wants to be woken, asked again only after it was. */
  readonly table: WatchTable;
  due: number;
}

/** More than any controller watches at a time. */
const MOST = 16;

/** The controllers of a circuit, with their pins wired to the values that are looked at. */
export class ControlBoard {
  readonly units: readonly ControlUnit[];
  readonly senses: readonly Sense[];
  /** Bends that somebody here switches. */
  readonly bends: readonly number[];
  readonly wired: readonly Wired[];

  /** `first`: place of the first sense among the values looked at. */
  constructor(circuit: Circuit, plan: Plan, first: number) {
    const node = (net: string): number => plan.nodeOf.get(net)!;
    this.units = circuit.parts.flatMap((part) => (part.kind === 'controller' ? [controlOf(part, node)] : []));
    this.senses = this.units.flatMap((unit) => unit.senses);
    const bendOf = (name: string): number => plan.bends.findIndex(({ ref }) => ref === name);
    let next = first;
    this.wired = this.units.map((unit) => {
      const at = next;
      next += unit.senses.length;
      return { unit, first: at, gate: bendOf(unit.drives), supply: bendOf(unit.ref), table: emptyTable(MOST, COMPARATOR_SLACK), due: 0 };
    });
    this.bends = this.wired.flatMap(({ gate, supply }) => [gate, supply].filter((bend) => bend >= 0));
    this.refresh();
  }

  /** Asks all of them anew; to be called after a state was loaded. */
  refresh(): void {
    for (const one of this.wired) one.due = ask(one);
  }

  /** Next time a controller wants to be woken, ticks. */
  due(): number {
    let next = Number.POSITIVE_INFINITY;
    for (const { due } of this.wired) if (due < next) next = due;
    return next;
  }

  /** Wakes whoever is due or has seen what it watches for; says whether anybody was. */
  wake(tick: number, values: Float64Array): boolean {
    let woken = false;
    for (const one of this.wired) {
      if (one.due > tick && fired(one.table, values, true) < 0) continue;
      woken = true;
      one.unit.wake(tick, (sense) => values[one.first + sense]!);
      one.due = ask(one);
    }
    return woken;
  }
}

function ask({ unit, first, table }: Wired): number {
  table.count = 0;
  for (const watch of unit.watches()) addWatch(table, watch, (sense) => first + sense);
  return unit.due();
}
