import { enumerateFaults, type Fault, faultId } from '../solver/fault.ts';
import type { Bench } from '../working/bench/bench.ts';
import { findRead } from '../working/bench/open-value.ts';
import { isOwn, type Model, TRACK_REF } from './model.ts';

/** Faults that are run, and those that are only listed, with the reason. */
export interface FaultList {
  readonly run: readonly Fault[];
  /** Their ids, in the same order. */
  readonly ids: readonly string[];
  /** Shorts between the mains side and the output inside one part: the barrier itself is gone, and no run is needed to say so. */
  readonly acrossBarrier: readonly Fault[];
  /** Shorts of a part made for its place and established to be what it says. */
  readonly certified: readonly Fault[];
}

/** Every single fault of the traced parts: what the model adds of its own has none. */
export function faultsOf(model: Model, bench: Bench, sideOf: ReadonlyMap<string, string>): FaultList {
  const established = new Set(
    bench.one.parts.flatMap(({ ref, identity, safetyClass }) =>
      findRead(identity) === 'established' && findRead(safetyClass)?.startsWith('Y') === true ? [ref] : [],
    ),
  );
  // a link is wire: it can come off, and neither wears nor is made shorter by a short; a choke is run as its wires
  const wires = bench.one.parts.filter(({ kind }) => ['jumper', 'commonModeChoke'].includes(findRead(kind) ?? '')).map(({ ref }) => ref);
  const isWire = (ref: string): boolean => wires.some((wire) => ref === wire || ref.startsWith(`${wire}-`));
  const all = enumerateFaults(model.circuit).filter(
    ({ ref, mode }) => !isOwn(ref) && ref !== TRACK_REF && (mode === 'open' || !isWire(ref)),
  );
  const crosses = (fault: Fault): boolean => {
    const part = model.circuit.parts.find(({ ref }) => ref === fault.ref);
    if (fault.mode !== 'short' || (part?.kind !== 'transformer' && part?.kind !== 'optocoupler')) return false;
    const sides = fault.pins.map((pin) => sideOf.get(netOfPin(part, pin)) === 'mains');
    return sides[0] !== sides[1];
  };
  const run = all.filter((fault) => !crosses(fault) && !(fault.mode === 'short' && established.has(fault.ref)));
  return {
    run,
    ids: run.map(faultId),
    acrossBarrier: all.filter(crosses),
    certified: all.filter((fault) => fault.mode === 'short' && established.has(fault.ref)),
  };
}

type TwoSided = Extract<Model['circuit']['parts'][number], { kind: 'transformer' | 'optocoupler' }>;

function netOfPin(part: TwoSided, pin: string): string {
  if (part.kind === 'optocoupler') return (pin.startsWith('led') ? part.led : part.transistor)[pin.endsWith('1') ? 0 : 1];
  const winding = part.windings.find(({ name }) => pin === `${name}.1` || pin === `${name}.2`);
  return winding?.pins[pin.endsWith('.1') ? 0 : 1] ?? '';
}
