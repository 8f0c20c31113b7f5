import type { CircuitPart } from '../circuit/circuit.ts';
import type { JobKey } from '../circuit/recognise/job.ts';
import type { Recognised } from '../circuit/recognise/recognise.ts';
import type { Role } from '../evidence/instrument.ts';
import type { Part } from '../evidence/sample.ts';
import type { Kind } from '../quantity/unit.ts';
import type { Part as SolverPart } from '../solver/circuit.ts';
import type { Bench } from '../working/bench/bench.ts';
import { findRead } from '../working/bench/open-value.ts';
import { bestValue, ratingOf } from '../working/board/part-quantity.ts';
import { ASSUMED, type AssumedKey, type Assumption, type Missing } from './assumed.ts';

/** What a model is collected in: parts for the solver, what was assumed for them, and what is missing. */
export class Draft {
  readonly parts: SolverPart[] = [];
  readonly assumptions: Assumption[] = [];
  readonly missing: Missing[] = [];
  readonly bench: Bench;
  readonly recognised: Recognised;
  /** Nets on which only the drive of the switch stands. */
  readonly driveNets: ReadonlySet<string>;

  constructor(bench: Bench, recognised: Recognised, driveNets: ReadonlySet<string>) {
    this.bench = bench;
    this.recognised = recognised;
    this.driveNets = driveNets;
  }

  /** States an assumption; `value` where it follows from something else by the rule. */
  assume(key: AssumedKey, part: string | null, value: number | null = ASSUMED[key].value): number {
    const { unit, source } = ASSUMED[key];
    this.assumptions.push({ key, part, value, unit, source });
    return value ?? 0;
  }

  lack(key: Missing['key'], part: string): void {
    if (!this.missing.some((one) => one.key === key && one.part === part)) this.missing.push({ key, part });
  }

  evidence({ id }: CircuitPart): Part {
    return this.bench.parts.get(id)!;
  }

  job({ id }: CircuitPart): JobKey | null {
    return this.recognised.jobs.get(id)?.job ?? null;
  }

  marking(part: CircuitPart): string {
    const own = this.evidence(part);
    return (findRead<string>(own.marking) ?? findRead<string>(own.value) ?? '').toUpperCase();
  }

  /** Net of a pin; one of its own where nobody followed the track, which is told. */
  net(part: CircuitPart, pin: string): string {
    const net = part.pins.find((one) => one.pin === pin)?.net ?? null;
    if (net !== null) return net;
    this.lack('net', `${part.ref} ${pin}`);
    return `${part.id}.${pin}`;
  }

  /** The two nets of a part with two pins, by name where the names are known, else as they come. */
  ends(part: CircuitPart, first = '1', second = '2'): readonly [string, string] {
    const named = part.pins.some(({ pin }) => pin === first);
    const [one, other] = named ? [first, second] : [part.pins[0]?.pin ?? first, part.pins[1]?.pin ?? second];
    return [this.net(part, one), this.net(part, other)];
  }

  /** What was measured outranks what is marked; null where neither can be read. */
  value(part: CircuitPart, role: Role, kind: Kind): number | null {
    return bestValue(this.bench, this.evidence(part), role, kind, 'x').at?.value ?? null;
  }

  rating(part: CircuitPart, which: Parameters<typeof ratingOf>[1], kind: Kind): number | null {
    return ratingOf(this.evidence(part), which, kind, 'x').at?.value ?? null;
  }

  add(part: SolverPart): void {
    this.parts.push(part);
  }
}
